// SPDX-License-Identifier: GPL-3.0-or-later
#include "basics/number_text.h"

#include "basics/decimal.h"
#include "basics/number.h"

#include <algorithm>

namespace miterbook {

namespace {

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
    const Wide scaled = Wide(hours.minutes()) * powerOfTen(decimals);
    return decimalText(roundedQuotient(scaled, 60), decimals, decimals);
}

std::string formatMinutesPerUnit(MinutesPerUnit minutes) {
    return decimalText(minutes.hundredths(), 2, 0);
}

std::string formatQuantity(Quantity quantity, int decimals) {
    const int places = std::clamp(decimals, 0, 3);
    const std::int64_t step = powerOfTen(3 - places);
    return decimalText(roundedQuotient(quantity.thousandths(), step), places, 0);
}

} // namespace miterbook
