// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "bid/estimate.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace miterbook {

/// One line of an estimate priced both ways. Costs of the lines of a piece of work add up to its
/// cost, allowances left out.
struct LineBothWays {
    Money cost;                   ///< labour and its share of material, consumables and overhead
    Money byCost;                 ///< that with the bid's profit
    std::optional<Money> byPiece; ///< at the shop's piece price, where it has one
    bool isByPiece = false;       ///< how it is priced in this bid

    /// What the piece price leaves over the cost; nothing without one.
    std::optional<Money> left() const {
        return byPiece ? std::optional(*byPiece - cost) : std::nullopt;
    }
    bool loses() const { return byPiece && *byPiece < cost; }
    bool operator==(const LineBothWays&) const = default;
};

/// The lines of an estimate both ways, in its order. The material of a room or opening goes to the
/// tasks that it comes from, by their hours; what belongs to no task, consumables and overhead go
/// by what the lines cost without.
std::vector<LineBothWays> linesBothWays(const Estimate& estimate, const Takeoff& takeoff,
    const std::vector<StickPlan>& sticks, const PriceBook& prices, const BidSetup& setup);

/// "loses 12.30 at your piece price", "covers its cost, 8.00 short of the profit asked",
/// "brings 20.00 more than cost and profit"; empty without a piece price.
std::string bothWaysInWords(const LineBothWays& line, std::string_view currency);

/// Which lines lose money at the piece prices, in one sentence; which carry the house, in another.
std::vector<std::string> bothWaysSummary(
    const Estimate& estimate, const std::vector<LineBothWays>& lines, const Shop& shop);

} // namespace miterbook
