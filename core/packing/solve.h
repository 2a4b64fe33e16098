// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "packing/budget.h"
#include "packing/plan.h"
#include "packing/problem.h"

namespace miterbook::packing {

// A good plan within a few milliseconds for a house's worth of pieces, with a simple bound.
Solution quickPlan(const Problem& problem);

// The cheapest plan that the budget allows to find, with a certified lower bound. Among equal
// costs fewer different patterns are preferred, then the longest single remainder. Always
// returns a plan, at least the quick one; a stopped budget is honoured within milliseconds.
Solution solve(const Problem& problem, Budget& budget, const Progress& progress = {});

} // namespace miterbook::packing
