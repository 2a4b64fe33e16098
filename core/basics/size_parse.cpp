// SPDX-License-Identifier: GPL-3.0-or-later
#include "basics/length_scan.h"
#include "basics/length_text.h"
#include "basics/quote.h"

#include <algorithm>
#include <vector>

namespace miterbook {

namespace {

constexpr std::string_view digitSet = "0123456789";

Error notASize(std::string_view text) {
    return badInput(inQuotes(text) + " is not a size; write it as 3068, 2-8 x 6-8 or 36 x 60.");
}

int valueOf(std::string_view digits) {
    int value = 0;
    for (const char c : digits)
        value = value * 10 + (c - '0');
    return value;
}

/// Feet and inches run together: "30" is 3-0; "210" is 2-10, for 21-0 is no opening; "160" is 16-0;
/// "110" could be 1-10 or 11-0. Openings go up to 20 ft.
std::vector<Length> runTogether(std::string_view digits) {
    std::vector<Length> readings;
    for (const std::size_t feetDigits : {std::size_t{1}, std::size_t{2}}) {
        if (feetDigits >= digits.size() || digits.front() == '0')
            continue;
        const int feet = valueOf(digits.substr(0, feetDigits));
        const std::string_view rest = digits.substr(feetDigits);
        const bool spelt = rest.size() == 1 || (rest.size() == 2 && rest.front() == '1');
        if (feet <= 20 && spelt && valueOf(rest) <= 11)
            readings.push_back(Length::feet(feet) + Length::inches(valueOf(rest)));
    }
    return readings;
}

/// `3068`, `21068`, `30610`: every way to read a width and a height run together.
std::vector<Size> slabReadings(std::string_view digits) {
    std::vector<Size> readings;
    if (digits.size() < 4 || digits.size() > 6)
        return readings;
    for (const std::size_t split : {std::size_t{2}, std::size_t{3}}) {
        for (const Length width : runTogether(digits.substr(0, split))) {
            for (const Length height : runTogether(digits.substr(split)))
                readings.push_back({width, height});
        }
    }
    return readings;
}

std::string doorText(Length length) {
    const std::int64_t inches = length / Length::inches(1);
    return std::to_string(inches / 12) + '-' + std::to_string(inches % 12);
}

std::string doorText(Size size) {
    return doorText(size.width) + " x " + doorText(size.height);
}

Result<Size> readSlab(std::string_view text, std::string_view digits) {
    const std::vector<Size> readings = slabReadings(digits);
    if (readings.size() == 1)
        return readings.front();
    if (readings.empty())
        return notASize(text);
    return badInput(inQuotes(text) + " may be " + doorText(readings[0]) + " or "
        + doorText(readings[1]) + "; write it as " + doorText(readings[0]) + ".");
}

struct Halves {
    std::string first;
    std::string second;
};

std::optional<Halves> split(const std::string& plain) {
    std::size_t at = plain.find("by");
    std::size_t width = 2;
    if (at == std::string::npos) {
        at = plain.find('x');
        width = 1;
    }
    if (at == std::string::npos)
        return std::nullopt;
    return Halves{plainMeasure(plain.substr(0, at)), plainMeasure(plain.substr(at + width))};
}

/// In `902 x 2040 mm` and `36" x 60` the unit of one number holds for a bare other one.
void lendUnit(const std::string& marked, std::string& bare) {
    if (bare.find_first_not_of("0123456789 ./,-") != std::string::npos)
        return;
    const std::size_t end = marked.find_last_of(digitSet);
    if (end != std::string::npos)
        bare += marked.substr(end + 1);
}

/// `3/0`, `6/8` in the size of a door: feet and inches [common practice]; nothing for other text.
std::optional<Length> slashed(std::string_view text) {
    const std::size_t slash = text.find('/');
    if (slash == 0 || slash > 2 || text.size() < slash + 2 || text.size() > slash + 3)
        return std::nullopt;
    const std::string_view feet = text.substr(0, slash);
    const std::string_view inches = text.substr(slash + 1);
    const bool digits = feet.find_first_not_of(digitSet) == std::string_view::npos
        && inches.find_first_not_of(digitSet) == std::string_view::npos;
    if (!digits || valueOf(inches) > 11)
        return std::nullopt;
    return Length::feet(valueOf(feet)) + Length::inches(valueOf(inches));
}

} // namespace

Result<Size> parseSize(std::string_view text, LengthUnit bareUnit) {
    const std::string plain = plainMeasure(text);
    if (!plain.empty() && plain.find_first_not_of(digitSet) == std::string::npos)
        return readSlab(text, plain);
    auto halves = split(plain);
    if (!halves)
        return notASize(text);
    const auto slashedWidth = slashed(halves->first);
    const auto slashedHeight = slashed(halves->second);
    if (slashedWidth && slashedHeight)
        return Size{*slashedWidth, *slashedHeight};
    lendUnit(halves->second, halves->first);
    lendUnit(halves->first, halves->second);
    const auto width = parseDoorLength(halves->first, bareUnit);
    if (!width)
        return badInput("In the size " + inQuotes(text) + ": " + width.error().sentence);
    const auto height = parseDoorLength(halves->second, bareUnit);
    if (!height)
        return badInput("In the size " + inQuotes(text) + ": " + height.error().sentence);
    return Size{*width, *height};
}

} // namespace miterbook
