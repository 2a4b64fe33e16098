// SPDX-License-Identifier: GPL-3.0-or-later
#include "basics/number_text.h"

#include "basics/number.h"

#include <algorithm>

namespace miterbook {

namespace {

/// value / 10^places, with between `atLeast` and `places` decimals.
std::string decimalText(std::int64_t value, int places, int atLeast) {
    const bool negative = value < 0;
    std::string digits = std::to_string(negative ? -value : value);
    const auto width = static_cast<std::size_t>(places) + 1;
    if (digits.size() < width)
        digits.insert(0, width - digits.size(), '0');
    std::string whole = digits.substr(0, digits.size() - static_cast<std::size_t>(places));
    std::string fraction = digits.substr(whole.size());
    while (fraction.size() > static_cast<std::size_t>(atLeast) && fraction.back() == '0')
        fraction.pop_back();
    if (!fraction.empty())
        whole += '.' + fraction;
    return negative ? '-' + whole : whole;
}

void groupThousands(std::string& text) {
    const std::size_t first = text.front() == '-' ? 1 : 0;
    std::size_t at = std::min(text.find('.'), text.size());
    while (at > first + 3) {
        at -= 3;
        text.insert(at, 1, ',');
    }
}

} // namespace

std::string formatMoney(Money money, std::string_view symbol) {
    std::string text = decimalText(money.cents(), 2, 2);
    groupThousands(text);
    text.insert(text.front() == '-' ? 1 : 0, symbol);
    return text;
}

std::string formatUnitPrice(UnitPrice price) {
    return decimalText(price.tenThousandths(), 4, 2);
}

std::string formatPercent(Percent percent) {
    return decimalText(percent.basisPoints(), 2, 0);
}

std::string formatHours(Hours hours, int decimals) {
    std::int64_t scale = 1;
    for (int i = 0; i < decimals; ++i)
        scale *= 10;
    return decimalText(roundedQuotient(Wide(hours.minutes()) * scale, 60), decimals, decimals);
}

std::string formatMinutesPerUnit(MinutesPerUnit minutes) {
    return decimalText(minutes.hundredths(), 2, 0);
}

std::string formatQuantity(Quantity quantity, int decimals) {
    std::int64_t value = quantity.thousandths();
    const std::int64_t step = decimals <= 0 ? 1000 : decimals == 1 ? 100 : decimals == 2 ? 10 : 1;
    value = roundedQuotient(value, step);
    return decimalText(value, std::min(std::max(decimals, 0), 3), 0);
}

} // namespace miterbook
