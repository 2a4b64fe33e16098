// SPDX-License-Identifier: GPL-3.0-or-later
#include "basics/length_scan.h"
#include "basics/length_text.h"

#include <algorithm>

namespace miterbook {

namespace {

Error notASize(std::string_view text) {
    return badInput("\"" + std::string(text)
        + "\" is not a size; write it as 3068, 2-8 x 6-8 or 36 x 60.");
}

/// Feet and inches run together: "30" is 3-0, "210" is 2-10; nothing for other digits.
std::optional<Length> runTogether(std::string_view digits) {
    if (digits.size() < 2 || digits.size() > 3)
        return std::nullopt;
    const int feet = digits.front() - '0';
    int inches = 0;
    for (const char c : digits.substr(1))
        inches = inches * 10 + (c - '0');
    const bool fits = digits.size() == 2 || inches == 10 || inches == 11;
    if (feet == 0 || !fits)
        return std::nullopt;
    return Length::feet(feet) + Length::inches(inches);
}

/// `3068`, `21068`, `30610`: width and height run together, where only one reading makes sense.
std::optional<Size> slab(std::string_view digits) {
    std::optional<Size> found;
    for (const std::size_t split : {std::size_t{2}, std::size_t{3}}) {
        if (split >= digits.size())
            continue;
        const auto width = runTogether(digits.substr(0, split));
        const auto height = runTogether(digits.substr(split));
        if (!width || !height)
            continue;
        if (found)
            return std::nullopt;
        found = Size{*width, *height};
    }
    return found;
}

bool allDigits(std::string_view text) {
    return !text.empty() && std::ranges::all_of(text, [](char c) { return c >= '0' && c <= '9'; });
}

struct Halves {
    std::string first;
    std::string second;
};

std::optional<Halves> split(const std::string& plain) {
    std::size_t at = plain.find(" by ");
    std::size_t width = 4;
    if (at == std::string::npos) {
        at = plain.find('x');
        width = 1;
    }
    if (at == std::string::npos || plain.find('x', at + width) != std::string::npos)
        return std::nullopt;
    return Halves{plain.substr(0, at), plain.substr(at + width)};
}

/// The metric unit at the end of the second half holds for a bare first half too.
LengthUnit unitOfFirst(const Halves& halves, LengthUnit bareUnit) {
    return halves.second.ends_with("mm") ? LengthUnit::millimetres : bareUnit;
}

} // namespace

Result<Size> parseSize(std::string_view text, LengthUnit bareUnit) {
    const std::string plain = plainMeasure(text);
    if (allDigits(plain)) {
        const auto size = slab(plain);
        return size ? Result<Size>(*size) : Result<Size>(notASize(text));
    }
    const auto halves = split(plain);
    if (!halves)
        return notASize(text);
    const auto width = parseDoorLength(halves->first, unitOfFirst(*halves, bareUnit));
    if (!width)
        return badInput("In the size \"" + std::string(text) + "\": " + width.error().sentence);
    const auto height = parseDoorLength(halves->second, bareUnit);
    if (!height)
        return badInput("In the size \"" + std::string(text) + "\": " + height.error().sentence);
    return Size{*width, *height};
}

} // namespace miterbook
