// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "takeoff/takeoff.h"

namespace miterbook {

/// The "did you forget" list of a plan: what is there but usually comes with something that is not.
/// All are warnings, openings first, then rooms, then fittings and levels, in plan order.
std::vector<Remark> forgotten(const WholePlan& plan, const PriceBook& prices);

} // namespace miterbook
