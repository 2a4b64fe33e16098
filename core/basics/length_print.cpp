// SPDX-License-Identifier: GPL-3.0-or-later
#include "basics/length_text.h"

#include "basics/decimal.h"
#include "basics/number.h"

#include <numeric>

namespace miterbook {

namespace {

/// Whole inches and a reduced fraction: "35 1/2", "3/16", "36", of a length that is not negative.
std::string inchText(std::int64_t parts, std::int64_t denominator) {
    const std::int64_t whole = parts / denominator;
    const std::int64_t rest = parts % denominator;
    if (rest == 0)
        return std::to_string(whole);
    const std::int64_t common = std::gcd(rest, denominator);
    const std::string fraction = std::to_string(rest / common) + '/'
        + std::to_string(denominator / common);
    return whole == 0 ? fraction : std::to_string(whole) + ' ' + fraction;
}

std::string sign(bool negative) {
    return negative ? "-" : "";
}

std::string fractionText(Length length, LengthStyle style) {
    const std::int64_t denominator = style.denominator == 32 ? 32 : 16;
    const std::int64_t parts = roundedQuotient(Wide(length.nm()) * denominator, Length::nmPerInch);
    const std::int64_t size = parts < 0 ? -parts : parts;
    if (style.unit == LengthUnit::inches)
        return sign(parts < 0) + inchText(size, denominator);
    const std::int64_t foot = 12 * denominator;
    const std::string feet = size < foot ? "" : std::to_string(size / foot) + "' ";
    return sign(parts < 0) + feet + inchText(size % foot, denominator) + '"';
}

} // namespace

std::string formatLength(Length length, LengthStyle style) {
    if (style.unit != LengthUnit::millimetres)
        return fractionText(length, style);
    return decimalText(roundedQuotient(length.nm(), 100'000), 1, 0);
}

std::string formatLengthWithUnit(Length length, LengthStyle style) {
    const std::string text = formatLength(length, style);
    switch (style.unit) {
    case LengthUnit::inches:
        return text + '"';
    case LengthUnit::millimetres:
        return text + " mm";
    case LengthUnit::feetInches:
        break;
    }
    return text;
}

std::string formatFeet(Length length, int decimals) {
    const Wide scaled = Wide(length.nm()) * powerOfTen(decimals);
    return decimalText(roundedQuotient(scaled, Wide(Length::nmPerInch) * 12), decimals, decimals);
}

std::string exactInches(Length length) {
    // nm / 25 400 000 ends within ten places for every multiple of 1/64 in; others are rounded to
    // ten places, far below a nanometre.
    const Wide scaled = Wide(length.nm()) * powerOfTen(10);
    return decimalText(roundedQuotient(scaled, Length::nmPerInch), 10, 0);
}

} // namespace miterbook
