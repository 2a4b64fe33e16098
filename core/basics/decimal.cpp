// SPDX-License-Identifier: GPL-3.0-or-later
#include "basics/decimal.h"

namespace miterbook {

std::string decimalText(std::int64_t value, int places, int atLeast) {
    const bool negative = value < 0;
    std::string digits = std::to_string(negative ? -value : value);
    const auto decimals = static_cast<std::size_t>(places);
    if (digits.size() <= decimals)
        digits.insert(0, decimals + 1 - digits.size(), '0');
    std::string text = digits.substr(0, digits.size() - decimals);
    std::string fraction = digits.substr(text.size());
    while (fraction.size() > static_cast<std::size_t>(atLeast) && fraction.back() == '0')
        fraction.pop_back();
    if (!fraction.empty())
        text += '.' + fraction;
    return negative ? '-' + text : text;
}

} // namespace miterbook
