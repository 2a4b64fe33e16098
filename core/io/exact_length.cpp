// SPDX-License-Identifier: GPL-3.0-or-later
#include "io/exact_length.h"

#include <charconv>
#include <numeric>

namespace miterbook {

namespace {

constexpr std::int64_t nmPerSixtyFourth = Length::nmPerInch / 64;
constexpr std::int64_t nmPerTenthOfMillimetre = 100'000;

std::string inchText(std::int64_t sixtyFourths) {
    const std::int64_t whole = sixtyFourths / 64;
    const std::int64_t rest = sixtyFourths % 64;
    if (rest == 0)
        return std::to_string(whole);
    const std::int64_t common = std::gcd(rest, std::int64_t{64});
    const std::string fraction = std::to_string(rest / common) + "/" + std::to_string(64 / common);
    return whole == 0 ? fraction : std::to_string(whole) + " " + fraction;
}

std::string millimetreText(std::int64_t tenths) {
    const std::string whole = std::to_string(tenths / 10);
    return tenths % 10 == 0 ? whole + "mm" : whole + "." + std::to_string(tenths % 10) + "mm";
}

} // namespace

std::string exactLengthText(Length length) {
    if (length < Length())
        return "-" + exactLengthText(-length);
    if (length.nm() % nmPerSixtyFourth == 0)
        return inchText(length.nm() / nmPerSixtyFourth);
    if (length.nm() % nmPerTenthOfMillimetre == 0)
        return millimetreText(length.nm() / nmPerTenthOfMillimetre);
    return std::to_string(length.nm()) + "nm";
}

Result<Length> readExactLength(std::string_view text) {
    if (!text.ends_with("nm"))
        return parseDoorLength(text);
    const std::string_view digits = text.substr(0, text.size() - 2);
    std::int64_t nm = 0;
    const auto [end, failure] = std::from_chars(digits.data(), digits.data() + digits.size(), nm);
    const bool whole = failure == std::errc() && end == digits.data() + digits.size();
    if (!whole || nm < 0 || Length::nanometres(nm) > longestSensible)
        return badInput(
            "\"" + std::string(text) + "\" is not a length in nanometres up to 300 ft.");
    return Length::nanometres(nm);
}

} // namespace miterbook
