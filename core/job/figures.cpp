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
    return withOwnRack(book.prices, book.sheet(plan).of<RackMove>());
}

void reprice(JobFigures& figures, const Book& book, std::vector<StickPlan> sticks) {
    figures.sticks = std::move(sticks);
    figures.estimate = estimate(
        figures.takeoff, figures.sticks, book.prices, figures.setup, figures.whole.plan.floorArea);
    figures.buy = buyList(figures.takeoff, figures.sticks, book.prices);
}

} // namespace miterbook
