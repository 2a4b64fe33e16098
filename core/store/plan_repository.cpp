// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/plan_repository.h"

#include "store/table_loading.h"

namespace miterbook {

Result<SheetRows> loadPlanRows(Connection& connection, Id<Plan> plan) {
    SheetRows rows;
    const auto read = [&](auto store) { return store.ofPlan(plan); };
    if (auto loaded = loadTables(connection, rows.planRows(), read); !loaded)
        return loaded.error();
    if (auto loaded = loadTables(connection, rows.cutRows(), read); !loaded)
        return loaded.error();
    if (auto loaded = loadTables(connection, rows.soldRows(), read); !loaded)
        return loaded.error();
    if (auto loaded = loadTables(connection, rows.billRows(), read); !loaded)
        return loaded.error();
    if (auto loaded = loadTables(connection, rows.tieRows(), read); !loaded)
        return loaded.error();
    return rows;
}

} // namespace miterbook
