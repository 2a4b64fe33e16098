// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "bid/estimate.h"
#include "hours/done_units.h"

#include <vector>

namespace miterbook {

/// What was bid for one piece of work of a house, as its hours are held against it.
struct WorkBid {
    PieceOfWork work = PieceOfWork::doors;
    Hours hours;
    Money labour;   ///< hours at the crew rate
    Quantity units; ///< to be finished, in doneUnit(work); 0: nothing to count
    Money cost;     ///< what it takes if nothing unforeseen happens: without the contingency
    Money price;

    bool operator==(const WorkBid&) const = default;
};

/// The pieces of work of an estimate, in its order. Units are those of the tasks that count as
/// done (a window's frame, not its jamb extension).
std::vector<WorkBid> workBids(const Estimate& estimate);

/// The burdened hour that a bid was reckoned with; nothing where it has no labour.
Money crewRateIn(const std::vector<WorkBid>& bids);

} // namespace miterbook
