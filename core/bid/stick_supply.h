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
    };
    std::vector<Kind> kinds;
    Length longest;          ///< usable length, end trim taken off
    bool stocked = false;    ///< the yard has some stick, priced or not
    bool priced = false;     ///< some stick can be bought
};

StickSupply stickSupply(Id<Profile> profile, const PriceBook& prices);

/// What one cut takes out of a stick: the kerf, at 45 degrees kerf x sqrt 2, rounded up to 1/64 in.
Length kerfTaken(Length kerf, bool mitered);

/// The cutting problem of the lots that come out of some stick, in nanometres and cents.
packing::Problem cuttingProblem(
    const std::vector<StickNeed::Lot>& lots, bool mitered, const StickSupply& supply,
    const Practice& practice);

} // namespace miterbook
