// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/hours.h"
#include "bid/bid_setup.h"
#include "bid/material.h"
#include "bid/profit.h"
#include "bid/share_out.h"
#include "takeoff/takeoff.h"

#include <optional>
#include <string>
#include <vector>

namespace miterbook {

/// One line of the estimate: a task under its conditions, over all its sources.
struct EstimateLine {
    PieceOfWork work = PieceOfWork::doors;
    Task task = Task::other;
    Conditions conditions;
    Quantity quantity;               ///< in unitOf(task)
    MinutesPerUnit minutes;          ///< the book's rate; 0 where the book has none
    double factor = 1.0;             ///< product of the conditions' factors
    Hours hours;                     ///< quantity x minutes x factor, rounded once to the minute
    Money labour;                    ///< hours at the crew rate
    std::optional<Money> piecePrice; ///< quantity x the shop's piece price, where it has one
    bool byPiece = false;            ///< that is what it brings
    Money price; ///< what the line brings where any line is by the piece; else 0
    std::vector<Source> sources;

    bool operator==(const EstimateLine&) const = default;
};

/// What one piece of work costs and brings. cost() lines add up to the estimate's to the cent.
struct WorkTotal {
    PieceOfWork work = PieceOfWork::doors;
    Hours hours;
    Money labour;
    Money material; ///< sticks, parts and goods, with tax and delivery
    Money consumables;
    Money overhead;
    Money profit;
    Money price;      ///< cost() + profit
    Money allowances; ///< part of cost(), without overhead or profit
    Money contingency; ///< part of cost() that is kept for what nobody foresees

    /// What the house takes if nothing unforeseen happens.
    Money foreseen() const { return labour + material + consumables + overhead + allowances; }
    Money cost() const { return foreseen() + contingency; }
    bool operator==(const WorkTotal&) const = default;
};

/// Price, cost and hours of one plan or house.
struct Estimate {
    Pricing pricing = Pricing::costAndProfit;
    Money crewRate;                    ///< burdened, an hour
    std::vector<EstimateLine> lines;   ///< in piece of work, then task order
    std::vector<WorkTotal> works;      ///< only pieces of work that have something
    WorkTotal total;                   ///< exact sums of `works`
    Percent markup;                    ///< profit as a share of cost, whichever was asked for
    Percent margin;                    ///< profit as a share of price
    Money perManHour;                  ///< (price - material - consumables) / hours
    Money perSquareFoot;               ///< a check only; 0 when the floor area is not said
    std::vector<std::string> problems; ///< what keeps the price from being right
    std::vector<std::string> notes;    ///< worth knowing beside the price: tasks priced by cost

    bool operator==(const Estimate&) const = default;
};

/// Prices a takeoff. Labour per line = hours at the crew rate; each profile's cost is shared over
/// pieces of work by running length, cents by largest remainder; overhead and profit per piece of
/// work likewise, so that works add up to the total exactly.
///
/// A line by the piece (BidSetup's pricing, OtherWay) brings its piece price, which covers the
/// labour and the material of the rooms and openings it comes from. What no piece price covers
/// (tasks without one, material of rows without one, goods bought outright) is priced by its cost
/// with overhead and profit, and `notes` says which tasks. Profit is then what the price leaves
/// over the cost.
///
/// Delivery is shared over the material and not taxed: whether it is taxed differs from state to
/// state. Contingency is a share of labour, material and consumables; no overhead is taken on it,
/// profit is.
///
/// Allowances are added as they are. A minimum job and rounding up raise the profit of all pieces
/// of work in proportion to their prices.
Estimate estimate(const Takeoff& takeoff, const std::vector<StickPlan>& sticks,
    const PriceBook& prices, const BidSetup& setup, int floorArea);

} // namespace miterbook
