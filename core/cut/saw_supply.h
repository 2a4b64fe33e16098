// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "cut/rack_move.h"
#include "order/buy_list.h"

#include <vector>

namespace miterbook {

/// Sticks that are there to be cut: so many of one length of one profile.
struct StickOnHand {
    Id<Profile> profile;
    Length length;
    bool fromRack = false; ///< an offcut
    int count = 0;

    bool operator==(const StickOnHand&) const = default;
};

/// What the saw has: the offcuts in the rack, those that the house has taken from there, and what
/// the order buys, spares too. The rack first, then long sticks before short.
std::vector<StickOnHand> sticksOnHand(
    const BuyList& buy, const PriceBook& prices, const Table<RackMove>& moves);

/// The rack as a house's figures see it: what it took is counted still and what it put there is
/// not, so that neither changes what was bid and ordered for it.
PriceBook withOwnRack(const PriceBook& prices, const Table<RackMove>& moves);

} // namespace miterbook
