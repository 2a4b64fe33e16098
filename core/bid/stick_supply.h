// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "bid/material.h"
#include "packing/problem.h"

namespace miterbook {

/// What one profile can be cut from: offcuts in the rack at no price, and the stocked sticks that
/// have a price. Kinds are in the order of the cutting problem's sticks.
struct StickSupply {
    struct Kind {
        Length length;
        bool offcut = false;
        Money price;
        int available = 0; ///< offcuts only

        bool operator==(const Kind&) const = default;
    };
    std::vector<Kind> kinds;
    Length longest;       ///< usable length, end trim taken off
    bool stocked = false; ///< the yard has some stick, priced or not
    bool priced = false;  ///< some stick can be bought

    bool operator==(const StickSupply&) const = default;
};

StickSupply stickSupply(Id<Profile> profile, const PriceBook& prices);

/// The stick that is bought at the least for its length, the shorter of equals; nullptr for none.
const StickSupply::Kind* cheapestByLength(const StickSupply& supply);

/// The cutting problem of the lots that come out of some stick, in nanometres and cents. Where
/// offcuts count for something (Practice::offcutWorth) one in the rack costs what it is worth
/// there.
packing::Problem cuttingProblem(const std::vector<StickNeed::Lot>& lots, bool mitered,
    const StickSupply& supply, const Practice& practice);

} // namespace miterbook
