// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "bid/material.h"

#include <string>
#include <vector>

namespace miterbook {

/// So many sticks of one length of one profile.
struct BuyLine {
    Id<Profile> profile;
    Length length;
    int count = 0; ///< for the plan, without spares
    int spare = 0;
    Money price; ///< of one stick
    Money cost() const { return price * (count + spare); }

    bool operator==(const BuyLine&) const = default;
};

/// Offcuts the plan takes out of the rack.
struct RackLine {
    Id<Profile> profile;
    Length length;
    int count = 0;

    bool operator==(const RackLine&) const = default;
};

/// Goods by the each.
struct PartLine {
    PartUse use = PartUse::other;
    std::string name;
    int count = 0;
    Money price; ///< of one
    bool builderSupplies = false;
    Money cost() const { return builderSupplies ? Money() : price * count; }

    bool operator==(const PartLine&) const = default;
};

/// What to buy for a plan or house: sticks by profile and length (longest first), parts, and what
/// comes out of the rack.
struct BuyList {
    std::vector<BuyLine> sticks;
    std::vector<RackLine> rack;
    std::vector<PartLine> parts;
    Money sticksCost;
    Money partsCost;
    std::vector<std::string> problems;

    Money total() const { return sticksCost + partsCost; }
    bool operator==(const BuyList&) const = default;
};

/// The buy list of a takeoff's stick plans. Practice::spareSticks of the most-bought length of each
/// profile are added as spares.
BuyList buyList(
    const Takeoff& takeoff, const std::vector<StickPlan>& plans, const PriceBook& prices);

} // namespace miterbook
