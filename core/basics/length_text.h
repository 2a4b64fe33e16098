// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/length.h"
#include "basics/result.h"

#include <string>
#include <string_view>

namespace miterbook {

/// How lengths are written: the shop's choice, kept in the book.
enum class LengthUnit { inches, feetInches, millimetres };

struct LengthStyle {
    LengthUnit unit = LengthUnit::inches;
    int denominator = 16; ///< 16 or 32: fractions of an inch shown; ignored for millimetres

    bool operator==(const LengthStyle&) const = default;
};

/// The longest length that anything in a house may have; longer input is refused.
inline constexpr Length longestSensible = Length::feet(300);

/// Reads a length as the trade writes it: `35 1/2`, `35-1/2"`, `2'11-1/2`, `2' 11 1/2"`, `35½″`,
/// `3 ft 2 in`, `11/16`, `902mm`, `90.2 cm`, `0.9 m`, `35.5`. A bare number is inches, or
/// millimetres when `bareUnit` is LengthUnit::millimetres; a fraction is always inches. Decimals
/// with a point or a comma; `1,234` could be a thousand and is refused. Exact to the nanometre.
/// Errors: one sentence quoting the text (not a length, zero denominator, doubtful comma, negative,
/// a fraction of an inch or more, 12 inches or more after feet, over longestSensible).
Result<Length> parseLength(std::string_view text, LengthUnit bareUnit = LengthUnit::inches);

/// As parseLength, and also reads feet-inches as doors are called out: `2-8` is 2 ft 8 in [common
/// practice].
Result<Length> parseDoorLength(std::string_view text, LengthUnit bareUnit = LengthUnit::inches);

/// A size w x h.
struct Size {
    Length width;
    Length height;

    bool operator==(const Size&) const = default;
};

/// Reads an opening's size: `3068` = 3 ft 0 in x 6 ft 8 in [common practice; makers' window
/// call-outs differ], `21068` = 2-10 x 6-8, `2-8 x 6-8`, `2/8 x 6/8` (feet/inches), `36 x 60`,
/// `36 by 60`, `36" x 60"`, `3'0" × 5'0"`, `902 x 2040 mm`. Errors: one sentence quoting the text
/// (no size, digits with two readings such as 11068, or what parseDoorLength says of a half).
Result<Size> parseSize(std::string_view text, LengthUnit bareUnit = LengthUnit::inches);

/// Writes a length rounded to the style's fraction: `35 1/2`, `2' 11 1/2"`, `902` (no unit mark for
/// inches and millimetres: columns carry it). Negative lengths get a leading minus.
std::string formatLength(Length length, LengthStyle style = {});

/// As formatLength with the unit mark: `35 1/2"`, `2' 11 1/2"`, `902 mm`.
std::string formatLengthWithUnit(Length length, LengthStyle style = {});

/// Decimal feet with `decimals` places: `18.29`. For running feet.
std::string formatFeet(Length length, int decimals = 1);

/// Exact decimal inches without trailing zeros: `35.5`, `80.1875`. For JSON and exchange text.
std::string exactInches(Length length);

} // namespace miterbook
