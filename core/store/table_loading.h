// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/tables.h"
#include "job/any_row.h"
#include "store/row_store.h"

namespace miterbook {

/// Fills each table by what `read(RowStore<Row>)` gives; stops at the first that cannot be read.
template <class... Rows, class Read>
Result<void> loadTables(Connection& connection, Tables<Rows...>& tables, Read read) {
    Result<void> result;
    const auto load = [&]<class Row>(RowKind<Row>) {
        if (!result)
            return;
        auto rows = read(RowStore<Row>(connection));
        if (!rows)
            result = rows.error();
        else
            tables.template of<Row>() = std::move(rows).value();
    };
    (load(RowKind<Rows>()), ...);
    return result;
}

} // namespace miterbook
