// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/tables.h"
#include "store/table_store.h"

namespace miterbook {

// Reads the rows of tables from the book file, whatever their kinds.

/// Reads rows of a kind into `rows`, in the order of their ids.
Result<void> loadRows(
    Connection& connection, std::size_t kind, const RowsAsked& asked, RowMap& rows);

template <BookRow Row>
Result<Table<Row>> loadTable(Connection& connection, const RowsAsked& asked) {
    Table<Row> table;
    if (auto loaded = loadRows(connection, kindOf<Row>, asked, table.rows()); !loaded)
        return loaded.error();
    return table;
}

/// Fills each table; stops at the first that cannot be read.
template <BookRow... Rows>
Result<void> loadTables(Connection& connection, const RowsAsked& asked, Tables<Rows...>& tables) {
    Result<void> result;
    const auto load = [&](std::size_t kind, RowMap& rows) {
        if (result)
            result = loadRows(connection, kind, asked, rows);
    };
    (load(kindOf<Rows>, tables.template of<Rows>().rows()), ...);
    return result;
}

} // namespace miterbook
