// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/book_repository.h"

#include "store/row_loading.h"

namespace miterbook {

Result<PriceBook> loadPrices(Connection& connection) {
    PriceBook prices;
    PriceTables& tables = prices;
    auto loaded = loadTables(connection, RowsAsked::all(), tables);
    if (!loaded)
        return loaded.error();
    return prices;
}

} // namespace miterbook
