// SPDX-License-Identifier: GPL-3.0-or-later
#include "book/check_parts.h"
#include "book/checks.h"

#include "basics/length_text.h"
#include "basics/quote.h"
#include "basics/sha256.h"

#include <array>

namespace miterbook {

namespace {

/// A setting of the shop's practice: its name, its value and the most that makes sense.
struct Setting {
    const char* name;
    Length value;
    Length most;
};

constexpr Money dearestPart = Money::dollars(100'000);

} // namespace

Result<void> checkProfit(ProfitKind kind, Percent profit) {
    if (kind == ProfitKind::marginOnPrice)
        return Checks()
            .require(profit < Percent::hundred(),
                "A margin on price of " + formatPercent(profit)
                    + " % cannot be reached: it has to be under 100 %.")
            .require(profit >= Percent(), "A margin on price cannot be negative.")
            .result();
    return Checks().between(profit, 0, 1000, "A markup on cost").result();
}

Result<void> checkOverhead(Percent overhead) {
    return Checks().between(overhead, 0, 200, "Overhead").result();
}

Result<void> checkReserves(Percent contingency, Money delivery) {
    return Checks()
        .between(contingency, 0, 100, "Contingency")
        .between(delivery, Money::dollars(100'000), "Delivery")
        .result();
}

Result<void> checkPriceRules(Money minimum, Money roundTo) {
    return Checks()
        .between(minimum, Money::dollars(1'000'000), "A minimum job")
        .between(roundTo, Money::dollars(1'000), "What prices are rounded up to")
        .result();
}

Result<void> check(const Shop& shop, const PriceBook&) {
    return Checks()
        .require(!shop.currency.empty() && shop.currency.size() <= 8,
            "A currency sign is one to a few letters, such as $.")
        .require(shop.denominator == 16 || shop.denominator == 32,
            "Lengths are shown to 1/16 or 1/32 in.")
        .result();
}

Result<void> check(const Practice& practice, const PriceBook& book) {
    const std::array settings{
        Setting{"reveal", practice.reveal, Length::inches(3)},
        Setting{"floor gap", practice.floorGap, Length::inches(3)},
        Setting{"horn", practice.horn, Length::inches(12)},
        Setting{"head overhang", practice.headOverhang, Length::inches(12)},
        Setting{"return piece", practice.returnPiece, Length::inches(12)},
        Setting{"kerf", practice.kerf, Length::sixteenths(8)},
        Setting{"end trim", practice.endTrim, Length::inches(12)},
        Setting{"shortest offcut kept", practice.keepOffcut, Length::feet(20)},
        Setting{"splice", practice.scarf, Length::inches(12)},
        Setting{"long side", practice.longSide, Length::feet(20)},
        Setting{"longest leg", practice.longestLeg, Length::feet(20)},
        Setting{"shelf support span", practice.shelfSupport, Length::feet(10)},
        Setting{"baluster gap", practice.balusterGap, Length::inches(12)},
    };
    Checks checks;
    const LengthStyle style = book.shop().lengths();
    for (const Setting& setting : settings)
        checks.require(setting.value >= Length() && setting.value <= setting.most,
            "The " + std::string(setting.name) + " of " + formatLengthWithUnit(setting.value, style)
                + " is not between 0 and " + formatLengthWithUnit(setting.most, style) + ".");
    return checks.between(practice.offcutWorth, 0, 100, "The worth of an offcut")
        .require(practice.sawSwing > Angle() && practice.sawSwing <= Angle::degrees(75),
            "A saw swings up to 75 degrees either way.")
        .require(practice.spareSticks >= 0 && practice.spareSticks <= 100,
            "Spare sticks are between 0 and 100 for each profile.")
        .result();
}

Result<void> check(const Terms& terms, const PriceBook&) {
    if (auto profit = checkProfit(terms.profitKind, terms.profit); !profit)
        return profit;
    if (auto overhead = checkOverhead(terms.overhead); !overhead)
        return overhead;
    if (auto reserves = checkReserves(terms.contingency, terms.delivery); !reserves)
        return reserves;
    if (auto rules = checkPriceRules(terms.minimumJob, terms.roundTo); !rules)
        return rules;
    return Checks()
        .between(terms.hourlyRate, Money::dollars(10'000), "An hourly rate")
        .between(terms.materialTax, 0, 50, "A tax on material")
        .require(terms.hoursPerYear >= 100 && terms.hoursPerYear <= 4000,
            "Hours a year for one person are between 100 and 4,000.")
        .require(terms.tripsPerHouse >= 0 && terms.tripsPerHouse <= 100,
            "Trips to a house are between 0 and 100.")
        .require(terms.validDays >= 0 && terms.validDays <= 3650,
            "A bid stands between 0 and 3,650 days.")
        .result();
}

Result<void> check(const Builder& builder, const PriceBook& book) {
    return Checks()
        .require(!isBlank(builder.name), "A builder needs a name.")
        .require(!anotherIs(book.of<Builder>(), builder,
                     [&](const Builder& other) { return other.name == builder.name; }),
            "There is a builder called \"" + builder.name + "\" already.")
        .result();
}

Result<void> check(const Part& part, const PriceBook& book) {
    const bool counted = part.use != PartUse::other;
    return Checks()
        .require(!isBlank(part.name), "A part needs a name.")
        .between(part.price, dearestPart, part.name + ": a price")
        .require(!counted
                || !anotherIs(book.of<Part>(), part,
                    [&](const Part& other) { return other.use == part.use; }),
            "There is a part that is used as \"" + std::string(word(part.use)) + "\" already.")
        .result();
}

Result<void> check(const Consumable& consumable, const PriceBook& book) {
    return Checks()
        .require(!isBlank(consumable.name), "A consumable needs a name.")
        .between(consumable.price, dearestPart, consumable.name + ": a price")
        .require(consumable.feetEach > 0 && consumable.feetEach <= 1'000'000,
            consumable.name + ": one serves between 1 and "
                + (book.shop().unit == LengthUnit::millimetres ? "300,000 m" : "1,000,000 ft")
                + " of trim.")
        .result();
}

Result<void> check(const HeaderName& name, const PriceBook&) {
    return Checks()
        .require(!isBlank(name.header), "A schedule header needs the words that stand in the file.")
        .result();
}

Result<void> check(const Logo& logo, const PriceBook&) {
    const std::string what = "The picture " + inQuotes(logo.name);
    return Checks()
        .require(logo.type == "image/png" || logo.type == "image/jpeg",
            what + " is neither PNG nor JPEG.")
        .require(logo.content.size() > 0, what + " has nothing in it.")
        .require(logo.content.size() <= Logo::mostBytes,
            what + " is over 300 KB, the most that is kept for a letterhead.")
        .require(
            logo.sum == sha256(logo.content.content()), what + " is not what its SHA-256 says.")
        .result();
}

} // namespace miterbook
