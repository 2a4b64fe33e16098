// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/plan_repository.h"

#include "store/row_loading.h"

namespace miterbook {

Result<SheetRows> loadPlanRows(Connection& connection, Id<Plan> plan) {
    SheetRows rows;
    const RowsAsked asked = RowsAsked::ofPlan(plan);
    if (auto loaded = loadTables(connection, asked, rows.planRows()); !loaded)
        return loaded.error();
    if (auto loaded = loadTables(connection, asked, rows.cutRows()); !loaded)
        return loaded.error();
    if (auto loaded = loadTables(connection, asked, rows.soldRows()); !loaded)
        return loaded.error();
    if (auto loaded = loadTables(connection, asked, rows.billRows()); !loaded)
        return loaded.error();
    if (auto loaded = loadTables(connection, asked, rows.tieRows()); !loaded)
        return loaded.error();
    return rows;
}

} // namespace miterbook
