// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/plan_repository.h"

#include "store/table_loading.h"

namespace miterbook {

Result<PlanRows> loadPlanRows(Connection& connection, Id<Plan> plan) {
    PlanRows rows;
    auto loaded
        = loadTables(connection, rows, [&](auto store) { return store.ofPlan(plan); });
    if (!loaded)
        return loaded.error();
    return rows;
}

} // namespace miterbook
