// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "bid/material.h"
#include "packing/plan.h"
#include "packing/problem.h"

namespace miterbook {

/// One profile's need as a cutting problem in nanometres, and the way back.
struct StickProblem {
    packing::Problem problem;
    std::vector<Length> sticks;    ///< by problem stick
    std::vector<Money> prices;     ///< likewise; zero for an offcut
    std::vector<bool> fromRack;    ///< likewise
    std::vector<Length> lots;      ///< by problem piece

    /// The patterns of a solution, the rack first, then longer sticks first.
    std::vector<CutPattern> patterns(const packing::Plan& plan) const;
};

/// The kerf that one cut takes out of a stick: the blade's, times sqrt 2 where the cut is mitered at
/// 45 degrees, rounded up to 1/64 in.
Length kerfFor(const Practice& practice, bool mitered);

/// Stocked sticks at their prices, offcuts in the rack at nothing, the shop's kerf and end trim.
StickProblem stickProblem(const StickNeed& need, const PriceBook& prices);

} // namespace miterbook
