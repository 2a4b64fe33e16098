// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "plan/plan_rows.h"
#include "takeoff/takeoff.h"

namespace miterbook {

/// The "did you forget" list of a plan: what is there but usually comes with something that is not.
/// All are warnings, openings first, then rooms, then fittings and levels, in plan order.
std::vector<Remark> forgotten(const WholePlan& plan, const PriceBook& prices);

/// The remarks without those that were put away with a reason. A problem cannot be put away, and a
/// reminder whose numbers have changed is another one.
std::vector<Remark> standing(std::vector<Remark> remarks, const Table<Dismissal>& dismissals);

} // namespace miterbook
