// SPDX-License-Identifier: GPL-3.0-or-later
#include "book/check_parts.h"
#include "book/checks.h"

namespace miterbook {

namespace {

constexpr MinutesPerUnit slowest = MinutesPerUnit::whole(10'000); // a week and more for one
constexpr UnitPrice dearestUnit = UnitPrice::cents(10'000'000);
constexpr Money highestWage = Money::dollars(500);
constexpr Money highestBurden = Money::dollars(100'000);

std::string quoted(Task task) {
    return "\"" + std::string(word(task)) + "\"";
}

} // namespace

Result<void> check(const LabourRate& rate, const PriceBook& book) {
    return Checks()
        .require(rate.minutes >= MinutesPerUnit() && rate.minutes <= slowest,
            formatMinutesPerUnit(rate.minutes) + " minutes for " + quoted(rate.task)
                + " is not between 0 and 10000.")
        .require(!anotherIs(book.of<LabourRate>(), rate,
                     [&](const LabourRate& other) { return other.task == rate.task; }),
            "There is a labour rate for " + quoted(rate.task) + " already.")
        .result();
}

Result<void> check(const Factor& factor, const PriceBook& book) {
    const std::string name = "\"" + std::string(word(factor.condition)) + "\"";
    return Checks()
        .between(factor.percent, 10, 2000, "A factor for " + name)
        .require(!anotherIs(book.of<Factor>(), factor,
                     [&](const Factor& other) { return other.condition == factor.condition; }),
            "There is a factor for " + name + " already.")
        .result();
}

Result<void> check(const PiecePrice& price, const PriceBook& book) {
    return Checks()
        .require(price.price >= UnitPrice() && price.price <= dearestUnit,
            "A piece price of " + formatUnitPrice(price.price) + " for " + quoted(price.task)
                + " is not between 0 and 100,000.")
        .require(!anotherIs(book.of<PiecePrice>(), price,
                     [&](const PiecePrice& other) { return other.task == price.task; }),
            "There is a piece price for " + quoted(price.task) + " already.")
        .result();
}

Result<void> check(const CrewMember& member, const PriceBook&) {
    return Checks()
        .require(!isBlank(member.name), "A crew member needs a name.")
        .between(member.wage, highestWage, member.name + ": a wage an hour")
        .result();
}

Result<void> check(const Burden& burden, const PriceBook& book) {
    return Checks()
        .require(!isBlank(burden.name), "A burden item needs a name.")
        .between(burden.ofWages, 0, 200, burden.name + ": a share of wages")
        .between(burden.perYear, highestBurden, burden.name + ": an amount a year")
        .require(burden.year == 0 || (burden.year >= 2000 && burden.year <= 2200),
            burden.name + ": " + std::to_string(burden.year) + " is not a year from 2000 on.")
        .require(burden.from == noDate
                || !anotherIs(book.of<Burden>(), burden,
                    [&](const Burden& other) {
                        return other.name == burden.name && other.from == burden.from;
                    }),
            burden.name + " has figures from " + formatDate(burden.from, book.shop().monthFirst)
                + " on already.")
        .result();
}

} // namespace miterbook
