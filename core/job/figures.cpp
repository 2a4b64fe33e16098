// SPDX-License-Identifier: GPL-3.0-or-later
#include "job/figures.h"

#include "cut/saw_supply.h"

namespace miterbook {

JobFigures::JobFigures() = default;
JobFigures::JobFigures(const JobFigures&) = default;
JobFigures::JobFigures(JobFigures&&) noexcept = default;
JobFigures& JobFigures::operator=(const JobFigures&) = default;
JobFigures& JobFigures::operator=(JobFigures&&) noexcept = default;
JobFigures::~JobFigures() = default;
bool JobFigures::operator==(const JobFigures&) const = default;

JobFigures figuresFor(const Book& book, Id<Plan> plan, const Selection& selection, Effort effort,
    const std::function<bool()>& stop) {
    const PriceBook prices = pricesFor(book, plan);
    return figuresFor(book, plan, selection,
        [&](const StickNeed& need) { return planSticks(need, prices, effort, stop); });
}

JobFigures figuresFor(const Book& book, Id<Plan> plan, const Selection& selection,
    const std::function<StickPlan(const StickNeed&)>& planFor) {
    JobFigures figures;
    const Plan* row = book.plan(plan);
    if (!row)
        return figures;
    figures.whole = wholePlan(*row, book.sheet(plan), selection);
    const BidSetup* setup = book.bidSetup(plan);
    figures.setup = setup ? *setup : setupFrom(book.prices.terms(), plan);
    figures.takeoff = takeOff(figures.whole, book.prices, figures.setup.trips);
    std::vector<StickPlan> sticks;
    for (const StickNeed& need : stickNeeds(figures.takeoff))
        sticks.push_back(planFor(need));
    reprice(figures, book, std::move(sticks));
    return figures;
}

PriceBook pricesFor(const Book& book, Id<Plan> plan) {
    PriceBook prices = withOwnRack(book.prices, book.sheet(plan).of<RackMove>());
    const BidSetup* setup = book.bidSetup(plan);
    if (setup && setup->date.ok())
        prices.setDay(setup->date);
    return prices;
}

PriceBook pricesOfBid(const PriceBook& prices, const BidSetup& setup) {
    PriceBook priced = prices;
    if (setup.date.ok())
        priced.setDay(setup.date);
    return priced;
}

void reprice(JobFigures& figures, const Book& book, std::vector<StickPlan> sticks) {
    figures.sticks = std::move(sticks);
    const bool dated = figures.setup.date.ok();
    const PriceBook onItsDay = dated ? pricesOfBid(book.prices, figures.setup) : PriceBook();
    const PriceBook& prices = dated ? onItsDay : book.prices;
    figures.estimate = estimate(
        figures.takeoff, figures.sticks, prices, figures.setup, figures.whole.plan.floorArea);
    figures.buy = buyList(figures.takeoff, figures.sticks, prices);
}

} // namespace miterbook
