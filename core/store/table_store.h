// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/any_row.h"
#include "plan/plan.h"
#include "store/connection.h"
#include "store/row_sql.h"

#include <cstdint>
#include <functional>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace miterbook {

/// One row as the file has it: a cell for each column, in the order of the columns.
using Cells = std::vector<QVariant>;

/// Which rows of a table: all of them, or those that fit a condition in SQL with a key for each
/// placeholder.
struct RowsAsked {
    std::string condition; ///< empty: all
    Cells keys;

    static RowsAsked all() { return {}; }
    /// Those below a plan; only of tables whose rows are.
    static RowsAsked ofPlan(Id<Plan> plan);
};

/// Rows in and out of the table of one kind, by their shape; knows nothing of what they mean.
class TableStore {
public:
    /// `kind` as AnyRow has it.
    TableStore(Connection& connection, std::size_t kind);

    /// Gives each row to `take`, in the order of their ids. Errors: the sentence names a cell that
    /// cannot be read.
    Result<void> read(const RowsAsked& asked, const std::function<void(AnyRow&&)>& take);
    /// The row of an id; nothing when there is none.
    Result<std::optional<AnyRow>> find(std::int64_t id);
    /// Errors: Fault::conflict when the id is taken.
    Result<void> insert(const AnyRow& row);
    /// Errors: Fault::conflict when there is no such row; so with remove().
    Result<void> update(const AnyRow& row);
    Result<void> remove(std::int64_t id);

private:
    Result<void> changeOne(const std::string& sql, const Cells& cells);

    Connection& m_connection;
    std::size_t m_kind;
    const RowShape& m_shape;
    const RowSql& m_sql;
};

/// The statements over the table of a kind of row; made once for the whole run of the program.
const RowSql& sqlOf(std::size_t kind);

/// What is said when a row is not as the edit expects.
Error changedMeanwhile(std::string_view noun);

} // namespace miterbook
