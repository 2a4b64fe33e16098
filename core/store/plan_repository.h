// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "plan/plan_rows.h"
#include "store/connection.h"

namespace miterbook {

/// The rows below one plan.
Result<PlanRows> loadPlanRows(Connection& connection, Id<Plan> plan);

} // namespace miterbook
