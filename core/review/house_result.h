// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "hours/house_progress.h"

#include <vector>

namespace miterbook {

/// What a finished house was and what it took.
struct HouseFacts {
    Id<House> house;
    Id<Plan> plan;
    Id<Builder> builder;
    Date finished = noDate;
    std::vector<WorkBid> bids; ///< as it was sold
    std::vector<TimeEntry> entries;
    Money crewRate;       ///< burdened, an hour
    Money extras;         ///< what agreed extras brought
    Money extrasMaterial; ///< what their material cost
    Money backcharges;
    Money materialOver; ///< bought beyond what was bid; negative: less
};

/// One piece of work of a finished house: bid against actual.
struct WorkResult {
    PieceOfWork work = PieceOfWork::doors;
    Hours bid;
    Hours used;
    Quantity units; ///< in doneUnit(work)
    Money price;    ///< with what was agreed on extras
    Money bidPrice; ///< as it was bid
    Money bidCost;
    Money cost; ///< bidCost with the hours used in place of those bid

    Money profit() const { return price - cost; }
    Money bidProfit() const { return bidPrice - bidCost; }
    bool operator==(const WorkResult&) const = default;
};

struct HouseResult {
    Id<House> house;
    Id<Plan> plan;
    Id<Builder> builder;
    Date finished = noDate;
    std::vector<WorkResult> works; ///< in piece of work order
    Hours bid;
    Hours used;        ///< with what is lost
    Hours lost;        ///< waiting and callbacks
    int callbacks = 0; ///< days on which somebody was called back
    Money price;       ///< with extras
    Money cost;        ///< with lost hours, backcharges, material beyond the bid
    Money bidProfit;

    Money profit() const { return price - cost; }
    /// Nothing to divide by: no money.
    Money profitPerHour() const;
    const WorkResult* of(PieceOfWork work) const;
    bool operator==(const HouseResult&) const = default;
};

/// Labour at the crew rate for the hours used, all other cost as it was bid unless `materialOver`
/// says more. Works add up to the house but for what is lost, backcharges and materialOver.
HouseResult houseResult(const HouseFacts& facts);

} // namespace miterbook
