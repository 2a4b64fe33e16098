// SPDX-License-Identifier: GPL-3.0-or-later
#include "papers/exact_numbers.h"

#include "basics/digits.h"

namespace miterbook {

namespace {

/// Takes digits off the front; how many there were.
std::size_t takeDigits(std::string_view& text) {
    std::size_t count = 0;
    while (count < text.size() && isDigit(text[count]))
        ++count;
    text.remove_prefix(count);
    return count;
}

bool take(std::string_view& text, char c) {
    if (!text.starts_with(c))
        return false;
    text.remove_prefix(1);
    return true;
}

} // namespace

std::string exactDecimal(std::int64_t value, int places, int atLeast) {
    const bool negative = value < 0;
    std::string digits = std::to_string(value);
    if (negative)
        digits.erase(0, 1);
    const auto decimals = static_cast<std::size_t>(places);
    if (digits.size() <= decimals)
        digits.insert(0, decimals + 1 - digits.size(), '0');
    std::string fraction = digits.substr(digits.size() - decimals);
    digits.resize(digits.size() - decimals);
    while (fraction.size() > static_cast<std::size_t>(atLeast) && fraction.back() == '0')
        fraction.pop_back();
    if (!fraction.empty())
        digits += '.' + fraction;
    return negative ? '-' + digits : digits;
}

bool isJsonNumber(std::string_view text) {
    take(text, '-');
    const bool leadingZero = text.starts_with('0');
    const std::size_t whole = takeDigits(text);
    if (whole == 0 || (leadingZero && whole > 1))
        return false;
    if (take(text, '.') && takeDigits(text) == 0)
        return false;
    if (take(text, 'e') || take(text, 'E')) {
        if (!take(text, '+'))
            take(text, '-');
        if (takeDigits(text) == 0)
            return false;
    }
    return text.empty();
}

} // namespace miterbook
