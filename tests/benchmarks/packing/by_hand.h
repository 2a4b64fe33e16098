// SPDX-License-Identifier: GPL-3.0-or-later
// What a person does without a solver.
#pragma once

#include "packing/plan.h"
#include "packing/problem.h"

namespace miterbook::packing {

// First fit by falling length: each piece goes on the first stick begun that has room for it,
// else on a new one of the length that is cheapest per foot and long enough; offcuts count as
// begun, longest first. In the end each stick becomes the cheapest one that holds its pieces.
Plan firstFit(const Problem& problem);

// The running length and so many percent more, bought in whole sticks of the length that is
// cheapest per foot. Nobody knows whether the pieces can be cut from them.
std::int64_t byPercentage(const Problem& problem, int percent);

} // namespace miterbook::packing
