// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace miterbook {

/// The statements over one table, plain SQL that any engine understands.
struct RowSql {
    std::string select; ///< of all columns
    std::string insert; ///< binds every column
    std::string update; ///< binds every column, then the id
    std::string remove; ///< binds the id

    /// The select of the rows that fit a condition, by id; empty: of all.
    std::string selectWhere(const std::string& condition) const;
};

/// `columns` in the order in which they are bound and read, "id" among them.
RowSql rowSql(std::string_view table, const std::vector<std::string_view>& columns);

/// A name between double quotes; some of the trade's words are words of SQL.
std::string quoted(std::string_view name);

} // namespace miterbook
