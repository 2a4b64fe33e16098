// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/sheet_rows.h"
#include "store/connection.h"

namespace miterbook {

/// The rows below one plan.
Result<SheetRows> loadPlanRows(Connection& connection, Id<Plan> plan);

} // namespace miterbook
