// SPDX-License-Identifier: GPL-3.0-or-later
#include "papers/cells.h"

#include "basics/number_text.h"
#include "papers/exact_numbers.h"

namespace miterbook {

namespace {

std::string exactMillimetres(Length length) {
    return exactDecimal(length.nm(), 6, 0);
}

bool isMetric(LengthStyle style) {
    return style.unit == LengthUnit::millimetres;
}

} // namespace

Cell countCell(std::int64_t count) {
    return {std::to_string(count), std::to_string(count)};
}

Cell moneyCell(Money money, std::string_view symbol) {
    return {formatMoney(money, symbol), exactDecimal(money.cents(), 2, 2)};
}

Cell quantityCell(Quantity quantity) {
    return {formatQuantity(quantity), exactDecimal(quantity.thousandths(), 3, 0)};
}

Cell hoursCell(Hours hours) {
    const int decimals = hours.minutes() % 6 == 0 ? 1 : 2;
    const std::int64_t exact = roundedQuotient(hours.minutes() * 10'000, 60);
    return {formatHours(hours, decimals), exactDecimal(exact, 4, 0)};
}

Cell lengthCell(Length length, LengthStyle style) {
    return {formatLength(length, style),
        isMetric(style) ? exactMillimetres(length) : exactInches(length)};
}

Cell stickCell(Length length, LengthStyle style) {
    if (isMetric(style))
        return lengthCell(length, style);
    const bool wholeFeet = length.nm() % Length::feet(1).nm() == 0;
    return {wholeFeet ? std::to_string(length / Length::feet(1))
                      : formatLength(length, {LengthUnit::feetInches, style.denominator}),
        exactDecimal(Quantity::runningFeet(length).thousandths(), 3, 0)};
}

std::string lengthTitle(std::string_view title, LengthStyle style) {
    return std::string(title) + (isMetric(style) ? ", mm" : ", in");
}

std::string stickTitle(LengthStyle style) {
    return isMetric(style) ? "Length, mm" : "Length, ft";
}

} // namespace miterbook
