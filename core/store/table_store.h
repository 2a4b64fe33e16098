// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/row_shape.h"
#include "store/connection.h"
#include "store/row_sql.h"

#include <cstdint>
#include <functional>
#include <string>
#include <string_view>
#include <vector>

namespace miterbook {

/// One row as the file has it: a cell for each column, in the order of the columns.
using Cells = std::vector<QVariant>;

/// A table of the book file and the rows it holds.
struct TableShape {
    const RowShape* row = nullptr;
    RowSql sql;
};

/// The table of a kind of row of the book; made once for the whole run of the program.
const TableShape& tableShape(const RowShape& row);

/// Rows in and out of one table, by their shape; knows nothing of what they mean.
class TableStore {
public:
    /// The shape must outlive the store.
    TableStore(Connection& connection, const TableShape& shape)
        : m_connection(connection)
        , m_shape(shape) {}

    const RowSql& sql() const { return m_shape.sql; }

    /// Runs a select of all columns, binding the keys; reads each row into `row` and calls keep(),
    /// which leaves `row` as a new one. Errors: the sentence names a cell that cannot be read.
    Result<void> read(
        const std::string& sql, const Cells& keys, void* row, const std::function<void()>& keep);
    /// Reads the row of an id; false, and `row` as it was, when there is none.
    Result<bool> readOne(std::int64_t id, void* row);
    /// Errors: Fault::conflict when the id is taken.
    Result<void> insert(const void* row);
    /// Errors: Fault::conflict when there is no such row; so with remove().
    Result<void> update(const void* row, std::int64_t id);
    Result<void> remove(std::int64_t id);

private:
    Result<void> changeOne(const std::string& sql, const Cells& cells);

    Connection& m_connection;
    const TableShape& m_shape;
};

/// What is said when a row is not as the edit expects.
Error changedMeanwhile(std::string_view noun);

} // namespace miterbook
