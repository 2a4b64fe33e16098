// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "packing/plan.h"
#include "packing/problem.h"

#include <optional>
#include <string>

namespace miterbook::packing {

// Goes through a plan with the saw in hand, sharing nothing with the solver: every stick can
// take its pieces, no limited stick is used too often, every piece is cut exactly as often as
// wanted (or named as missing), and the cost is right. One sentence on the first fault found.
std::optional<std::string> fault(const Problem& problem, const Plan& plan);

} // namespace miterbook::packing
