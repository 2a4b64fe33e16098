// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "store/connection.h"
#include "store/row_sql.h"

#include <functional>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace miterbook {

/// One row as the file has it: a cell for each column, in the order of the columns.
using Cells = std::vector<QVariant>;

/// What a table is called and made of.
struct TableShape {
    std::string_view table;
    std::string_view noun; ///< for sentences
    std::vector<std::string_view> columns;
    RowSql sql;
};

/// Rows as cells in and out of one table; knows nothing of what they mean.
class TableStore {
public:
    /// The shape must outlive the store.
    TableStore(Connection& connection, const TableShape& shape)
        : m_connection(connection)
        , m_shape(shape) {}

    /// Takes one row; what it returns ends the reading when it is an error.
    using Take = std::function<Result<void>(const Cells&)>;

    /// Runs a select of the shape's columns, binding the keys.
    Result<void> select(const std::string& sql, const Cells& keys, const Take& take);
    /// Errors: Fault::conflict when the id is taken.
    Result<void> insert(const Cells& cells);
    /// Errors: Fault::conflict when there is no such row; so with remove().
    Result<void> update(const Cells& cells, std::int64_t id);
    Result<void> remove(std::int64_t id);

private:
    Result<void> changeOne(const std::string& sql, const Cells& cells);

    Connection& m_connection;
    const TableShape& m_shape;
};

/// What is said when a row is not as the edit expects.
Error changedMeanwhile(std::string_view noun);

} // namespace miterbook
