// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/table.h"
#include "plan/plan.h"
#include "store/cell.h"
#include "store/table_store.h"

namespace miterbook {

/// Reads the rows of one kind from the book file. Rows are written by their shape, whatever their
/// kind: see any_row_store.h.
template <class Row>
class RowStore {
public:
    explicit RowStore(Connection& connection)
        : m_store(connection, tableShape(rowShape<Row>())) {}

    Result<Table<Row>> all() { return select(m_store.sql().selectAll, {}); }
    /// Rows below one plan; only for kinds that are below a plan.
    Result<Table<Row>> ofPlan(Id<Plan> plan) {
        return select(m_store.sql().selectOfPlan, {numberCell(plan.value())});
    }
    /// Those that fit a condition in SQL, with a key for each placeholder.
    Result<Table<Row>> where(const std::string& condition, const Cells& keys) {
        return select(m_store.sql().select + " WHERE " + condition + " ORDER BY \"id\"", keys);
    }

private:
    Result<Table<Row>> select(const std::string& sql, const Cells& keys);

    TableStore m_store;
};

template <class Row>
Result<Table<Row>> RowStore<Row>::select(const std::string& sql, const Cells& keys) {
    Table<Row> rows;
    Row row;
    const auto read = m_store.read(sql, keys, &row, [&] {
        rows.put(std::move(row));
        row = Row();
    });
    if (!read)
        return read.error();
    return rows;
}

} // namespace miterbook
