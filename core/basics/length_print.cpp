// SPDX-License-Identifier: GPL-3.0-or-later
#include "basics/length_text.h"

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
    const std::string fraction
        = std::to_string(rest / common) + '/' + std::to_string(denominator / common);
    return whole == 0 ? fraction : std::to_string(whole) + ' ' + fraction;
}

/// value / 10^places with trailing zeros dropped down to `atLeast` places; value not negative.
std::string decimalText(std::int64_t value, int places, int atLeast) {
    std::int64_t scale = 1;
    for (int i = 0; i < places; ++i)
        scale *= 10;
    std::string fraction = std::to_string(value % scale);
    fraction.insert(0, static_cast<std::size_t>(places) - fraction.size(), '0');
    while (static_cast<int>(fraction.size()) > atLeast && fraction.back() == '0')
        fraction.pop_back();
    const std::string whole = std::to_string(value / scale);
    return fraction.empty() ? whole : whole + '.' + fraction;
}

std::string sign(bool negative) {
    return negative ? "-" : "";
}

std::string fractionText(Length length, LengthStyle style) {
    const std::int64_t denominator = style.denominator == 32 ? 32 : 16;
    const std::int64_t parts
        = roundedQuotient(Wide(length.nm()) * denominator, Length::nmPerInch);
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
    const std::int64_t tenths = roundedQuotient(length.nm(), 100'000);
    return sign(tenths < 0) + decimalText(tenths < 0 ? -tenths : tenths, 1, 0);
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
    std::int64_t scale = 1;
    for (int i = 0; i < decimals; ++i)
        scale *= 10;
    const std::int64_t value
        = roundedQuotient(Wide(length.nm()) * scale, Wide(Length::nmPerInch) * 12);
    return sign(value < 0) + decimalText(value < 0 ? -value : value, decimals, decimals);
}

std::string exactInches(Length length) {
    // nm / 25 400 000 in ends within ten places for every multiple of 1/64 in; others are rounded
    // to ten places, far below a nanometre.
    const Wide scaled = Wide(length.nm() < 0 ? -length.nm() : length.nm()) * 10'000'000'000;
    const Wide value = (scaled + Length::nmPerInch / 2) / Length::nmPerInch;
    const auto whole = static_cast<std::int64_t>(value / 10'000'000'000);
    const auto rest = static_cast<std::int64_t>(value % 10'000'000'000);
    const std::string fraction = decimalText(rest, 10, 0).substr(1);
    return sign(length.nm() < 0) + std::to_string(whole) + fraction;
}

} // namespace miterbook
