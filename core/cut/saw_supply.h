// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

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

/// What the saw has: the offcuts in the rack and what the order buys, spares too. The rack first,
/// then long sticks before short.
std::vector<StickOnHand> sticksOnHand(const BuyList& buy, const PriceBook& prices);

} // namespace miterbook
