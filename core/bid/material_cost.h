// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "bid/bid_setup.h"
#include "bid/material.h"
#include "bid/work_money.h"
#include "takeoff/takeoff.h"

namespace miterbook {

/// What material costs by piece of work: sticks (by the stick plans, or by waste percentage where the
/// setup asks for one), parts the builder does not supply, goods bought outright, and the shop's tax
/// on all of it. Each profile's cost is shared by running length.
WorkMoney materialCost(const Takeoff& takeoff, const std::vector<StickPlan>& sticks,
    const PriceBook& prices, const BidSetup& setup);

/// What nails, adhesive and caulk cost by piece of work: running feet / feet that one serves x price
/// of one, each consumable rounded once.
WorkMoney consumablesCost(const Takeoff& takeoff, const PriceBook& prices);

/// Material of one profile by waste percentage: running feet x (1 + waste) at the cheapest stocked
/// price a foot; zero when none is stocked.
Money costWithWaste(Length needed, Id<Profile> profile, const PriceBook& prices, Percent waste);

} // namespace miterbook
