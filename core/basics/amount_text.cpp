// SPDX-License-Identifier: GPL-3.0-or-later
#include "basics/amount_text.h"

#include "basics/decimal.h"
#include "basics/number.h"
#include "basics/number_text.h"

namespace miterbook {

namespace {

/// Said = counted x times / over; both 1 where a unit is said as it is counted.
struct UnitRatio {
    Wide times = 1;
    Wide over = 1;
};

/// A foot is 0.3048 m exactly [pub: international yard and pound agreement, 1959].
UnitRatio ratioOf(Unit unit, LengthUnit written) {
    if (written != LengthUnit::millimetres)
        return {};
    if (unit == Unit::linearFoot)
        return {3048, 10'000};
    if (unit == Unit::squareFoot)
        return {Wide(3048) * 3048, Wide(10'000) * 10'000};
    return {};
}

bool isSame(const UnitRatio& ratio) {
    return ratio.times == ratio.over;
}

/// What one costs or takes goes the other way: a metre is more than a foot. To the nearest `step`.
std::int64_t perSaid(std::int64_t counted, const UnitRatio& ratio, std::int64_t step) {
    if (isSame(ratio))
        return counted;
    return roundedQuotient(Wide(counted) * ratio.over, ratio.times * step) * step;
}

std::int64_t perCounted(std::int64_t said, const UnitRatio& ratio) {
    return isSame(ratio) ? said : roundedQuotient(Wide(said) * ratio.times, ratio.over);
}

} // namespace

std::string unitText(Unit unit, LengthUnit written) {
    const bool metric = written == LengthUnit::millimetres;
    if (metric && unit == Unit::linearFoot)
        return "m";
    if (metric && unit == Unit::squareFoot)
        return "m²";
    return std::string(word(unit));
}

Quantity amountSaid(Quantity counted, Unit unit, LengthUnit written) {
    const UnitRatio ratio = ratioOf(unit, written);
    return Quantity::thousandths(
        roundedQuotient(Wide(counted.thousandths()) * ratio.times, ratio.over));
}

Quantity amountCounted(Quantity said, Unit unit, LengthUnit written) {
    const UnitRatio ratio = ratioOf(unit, written);
    return Quantity::thousandths(
        roundedQuotient(Wide(said.thousandths()) * ratio.over, ratio.times));
}

std::string amountText(Quantity counted, Unit unit, LengthUnit written, int decimals) {
    return formatQuantity(amountSaid(counted, unit, written), decimals)
        .append(" ")
        .append(unitText(unit, written));
}

UnitPrice priceSaid(UnitPrice counted, Unit unit, LengthUnit written) {
    const std::int64_t step = unit == Unit::squareFoot ? 50 : 10;
    return UnitPrice::tenThousandths(
        perSaid(counted.tenThousandths(), ratioOf(unit, written), step));
}

UnitPrice priceCounted(UnitPrice said, Unit unit, LengthUnit written) {
    return UnitPrice::tenThousandths(perCounted(said.tenThousandths(), ratioOf(unit, written)));
}

MinutesPerUnit minutesSaid(MinutesPerUnit counted, Unit unit, LengthUnit written) {
    const std::int64_t step = unit == Unit::squareFoot ? 50 : 5;
    return MinutesPerUnit::hundredths(perSaid(counted.hundredths(), ratioOf(unit, written), step));
}

MinutesPerUnit minutesCounted(MinutesPerUnit said, Unit unit, LengthUnit written) {
    return MinutesPerUnit::hundredths(perCounted(said.hundredths(), ratioOf(unit, written)));
}

std::string formatRun(Length length, LengthUnit written, int decimals) {
    if (written != LengthUnit::millimetres)
        return formatFeet(length, decimals);
    const Wide scaled = Wide(length.nm()) * powerOfTen(decimals);
    return decimalText(roundedQuotient(scaled, runOne(written).nm()), decimals, decimals);
}

std::string_view runUnit(LengthUnit written) {
    return written == LengthUnit::millimetres ? "m" : "ft";
}

std::string formatRunWithUnit(Length length, LengthUnit written, int decimals) {
    return formatRun(length, written, decimals).append(" ").append(runUnit(written));
}

Quantity runSaid(Length length, LengthUnit written) {
    return written == LengthUnit::millimetres
        ? Quantity::thousandths(roundedQuotient(length.nm(), 1'000'000))
        : Quantity::runningFeet(length);
}

int floorSaid(int squareFeet, LengthUnit written) {
    const UnitRatio ratio = ratioOf(Unit::squareFoot, written);
    return static_cast<int>(roundedQuotient(squareFeet * ratio.times, ratio.over));
}

int floorCounted(int said, LengthUnit written) {
    const UnitRatio ratio = ratioOf(Unit::squareFoot, written);
    return static_cast<int>(roundedQuotient(said * ratio.over, ratio.times));
}

std::string floorText(int squareFeet, LengthUnit written) {
    return std::to_string(floorSaid(squareFeet, written))
        + (written == LengthUnit::millimetres ? " m²" : " sq ft");
}

Money floorPriceSaid(Money aSquareFoot, LengthUnit written) {
    return Money::cents(perSaid(aSquareFoot.cents(), ratioOf(Unit::squareFoot, written), 1));
}

std::string_view floorUnitName(LengthUnit written) {
    return written == LengthUnit::millimetres ? "square metre" : "square foot";
}

std::string stickText(Length length, LengthUnit written) {
    if (written == LengthUnit::millimetres)
        return formatLengthWithUnit(length, {written, 16});
    if (length.nm() % Length::feet(1).nm() == 0)
        return std::to_string(length / Length::feet(1)) + " ft";
    return formatLengthWithUnit(length);
}

} // namespace miterbook
