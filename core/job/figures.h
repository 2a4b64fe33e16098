// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "bid/estimate.h"
#include "job/book.h"
#include "order/buy_list.h"

#include <functional>
#include <vector>

namespace miterbook {

/// Everything that is computed for one plan or house, from the book's values alone.
struct JobFigures {
    WholePlan whole;
    Takeoff takeoff;
    BidSetup setup;
    std::vector<StickPlan> sticks;
    Estimate estimate;
    BuyList buy;

    // Out of line: copying all these rows is much code in each file.
    JobFigures();
    JobFigures(const JobFigures&);
    JobFigures(JobFigures&&) noexcept;
    JobFigures& operator=(const JobFigures&);
    JobFigures& operator=(JobFigures&&) noexcept;
    ~JobFigures();

    bool operator==(const JobFigures&) const;
};

/// The figures of an opened plan with a selection of its elevations and options.
JobFigures figuresFor(const Book& book, Id<Plan> plan, const Selection& selection, Effort effort,
    const std::function<bool()>& stop = {});

/// The figures with the stick plan of each profile as `planFor` makes or remembers it.
JobFigures figuresFor(const Book& book, Id<Plan> plan, const Selection& selection,
    const std::function<StickPlan(const StickNeed&)>& planFor);

/// The shop's prices as the figures of a plan see them: with the rack as it was for the house
/// before it took offcuts from there and put its own there.
PriceBook pricesFor(const Book& book, Id<Plan> plan);

/// The shop's prices on the day of a bid: in force on its date, or on the book's day where it has
/// none.
PriceBook pricesOfBid(const PriceBook& prices, const BidSetup& setup);

/// The same figures with other stick plans: the estimate and buy list follow.
void reprice(JobFigures& figures, const Book& book, std::vector<StickPlan> sticks);

} // namespace miterbook
