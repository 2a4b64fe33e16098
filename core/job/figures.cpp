// SPDX-License-Identifier: GPL-3.0-or-later
#include "job/figures.h"

namespace miterbook {

JobFigures figuresFor(const Book& book, Id<Plan> plan, const Selection& selection, Effort effort,
    const std::function<bool()>& stop) {
    JobFigures figures;
    const Plan* row = book.plan(plan);
    if (!row)
        return figures;
    figures.whole = wholePlan(*row, book.sheet(plan), selection);
    const BidSetup* setup = book.bidSetup(plan);
    figures.setup = setup ? *setup : setupFrom(book.prices.terms(), plan);
    figures.takeoff = takeOff(figures.whole, book.prices, figures.setup.trips);
    reprice(figures, book,
        planAllSticks(stickNeeds(figures.takeoff), book.prices, effort, stop));
    return figures;
}

void reprice(JobFigures& figures, const Book& book, std::vector<StickPlan> sticks) {
    figures.sticks = std::move(sticks);
    figures.estimate = estimate(figures.takeoff, figures.sticks, book.prices, figures.setup,
        figures.whole.plan.floorArea);
    figures.buy = buyList(figures.takeoff, figures.sticks, book.prices);
}

} // namespace miterbook
