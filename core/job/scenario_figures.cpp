// SPDX-License-Identifier: GPL-3.0-or-later
#include "job/scenario_figures.h"

#include "book/stick_prices.h"

#include <algorithm>

namespace miterbook {

namespace {

/// Every row of a table with something about it changed.
template <class Row, class Change>
void changeAll(Table<Row>& table, Change change) {
    const Table<Row> before = table;
    for (const auto& [id, row] : before) {
        Row changed = row;
        change(changed);
        table.put(std::move(changed));
    }
}

MinutesPerUnit scaled(MinutesPerUnit minutes, Percent percent) {
    return MinutesPerUnit::hundredths(
        roundedQuotient(Wide(minutes.hundredths()) * percent.basisPoints(), 10'000));
}

void changeRates(PriceBook& prices, const Scenario& scenario) {
    changeAll(prices.of<LabourRate>(), [&](LabourRate& rate) {
        rate.minutes = rate.task == scenario.task && scenario.taskMinutes > MinutesPerUnit()
            ? scenario.taskMinutes
            : scaled(rate.minutes, scenario.minutes);
    });
}

PriceBook changedPrices(const PriceBook& today, const Scenario& scenario) {
    PriceBook prices = pricesInForce(today);
    changeAll(prices.of<CrewMember>(),
        [&](CrewMember& member) { member.wage = share(member.wage, scenario.wages); });
    changeAll(prices.of<Stick>(),
        [&](Stick& stick) { stick.price = share(stick.price, scenario.material); });
    changeAll(
        prices.of<Part>(), [&](Part& part) { part.price = share(part.price, scenario.material); });
    changeAll(prices.of<Consumable>(),
        [&](Consumable& each) { each.price = share(each.price, scenario.material); });
    changeRates(prices, scenario);
    return prices;
}

/// Puts one profile in place of another wherever a row names it.
template <class Row>
void swapProfile(Row& row, Id<Profile> before, Id<Profile> after) {
    forEachField<Row>([&](const auto& field) {
        if constexpr (std::is_same_v<std::remove_cvref_t<decltype(row.*field.member)>,
                          Id<Profile>>) {
            if (row.*field.member == before)
                row.*field.member = after;
        }
    });
}

/// As much of the book as the figures of one plan need.
Book sliceIf(const Book& book, Id<Plan> plan, const Scenario& scenario, BidSetup setup) {
    setup.profitKind = scenario.profitKind;
    setup.profit = scenario.profit;
    setup.overhead = scenario.overhead;
    Book slice;
    slice.prices = changedPrices(pricesOfBid(book.prices, setup), scenario);
    if (!setup.id)
        setup.id = Id<BidSetup>(1);
    slice.jobs.of<BidSetup>().put(setup);
    Plan row = *book.plan(plan);
    SheetRows rows = book.sheet(plan);
    if (scenario.profile && scenario.insteadOf) {
        swapProfile(row, scenario.insteadOf, scenario.profile);
        const PlanRows& planned = book.sheet(plan);
        planned.forEach([&]<class Row>(const Table<Row>& table) {
            for (const auto& [id, each] : table) {
                Row swapped = each;
                swapProfile(swapped, scenario.insteadOf, scenario.profile);
                rows.of<Row>().put(std::move(swapped));
            }
        });
    }
    slice.jobs.of<Plan>().put(row);
    slice.sheets[plan] = std::move(rows);
    return slice;
}

/// The same cuts at other prices.
StickPlan repriced(StickPlan plan, const PriceBook& prices) {
    const std::vector<Stick> sticks = prices.stockedSticks(plan.profile);
    plan.cost = Money();
    for (CutPattern& pattern : plan.patterns) {
        const auto stick = std::ranges::find(sticks, pattern.stick, &Stick::length);
        if (!pattern.offcut && stick != sticks.end())
            pattern.price = stick->price;
        if (!pattern.offcut)
            plan.cost += pattern.price * pattern.times;
    }
    return plan;
}

} // namespace

Scenario scenarioFrom(const BidSetup& setup, std::string name) {
    Scenario scenario;
    scenario.plan = setup.plan;
    scenario.name = std::move(name);
    scenario.profitKind = setup.profitKind;
    scenario.profit = setup.profit;
    scenario.overhead = setup.overhead;
    return scenario;
}

std::vector<Scenario> scenariosOf(const Book& book, Id<Plan> plan) {
    std::vector<Scenario> scenarios;
    for (const auto& [id, scenario] : book.jobs.of<Scenario>()) {
        if (scenario.plan == plan)
            scenarios.push_back(scenario);
    }
    return scenarios;
}

JobFigures figuresIf(const Book& book, Id<Plan> plan, const Selection& selection,
    const Scenario& scenario, const JobFigures& today, StickMemory& memory) {
    if (!book.plan(plan))
        return {};
    const Book slice = sliceIf(book, plan, scenario, today.setup);
    const std::vector<StickNeed> needs = stickNeeds(today.takeoff);
    return figuresFor(slice, plan, selection, [&](const StickNeed& need) {
        const auto same = std::ranges::find(needs, need);
        const auto at = static_cast<std::size_t>(same - needs.begin());
        if (at < today.sticks.size())
            return repriced(today.sticks[at], slice.prices);
        StickQuestion question = stickQuestion(need, slice.prices);
        if (const StickPlan* known = memory.find(question))
            return *known;
        StickPlan made = planSticks(need, slice.prices, Effort::thorough);
        memory.keep(std::move(question), made);
        return made;
    });
}

BidOutcome outcomeOf(std::string name, const Estimate& estimate, const RiskBelief& belief) {
    const WorkTotal& total = estimate.total;
    BidOutcome outcome{
        std::move(name), total.price, total.cost(), total.profit, total.hours, estimate.margin};
    const RiskOutlook outlook(estimate, belief);
    if (outlook.any()) {
        outcome.chanceOfProfit = outlook.chanceOfProfit();
        outcome.chanceOfTarget = outlook.chanceOfTarget();
        outcome.breakEvenHours = outlook.breakEvenHours();
    }
    return outcome;
}

} // namespace miterbook
