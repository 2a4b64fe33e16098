// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/row_sql.h"

namespace miterbook {

namespace {

/// Each name between quotes with `after` behind it, separated by commas.
std::string listed(const std::vector<std::string_view>& names, std::string_view after) {
    std::string text;
    for (const std::string_view name : names)
        text += (text.empty() ? "" : ", ") + quoted(name) + std::string(after);
    return text;
}

std::string placeholders(std::size_t count) {
    std::string text;
    for (std::size_t i = 0; i < count; ++i)
        text += i == 0 ? "?" : ", ?";
    return text;
}

} // namespace

std::string quoted(std::string_view name) {
    return "\"" + std::string(name) + "\"";
}

RowSql rowSql(std::string_view table, const std::vector<std::string_view>& columns) {
    const std::string name = quoted(table);
    RowSql sql;
    sql.select = "SELECT " + listed(columns, "") + " FROM " + name;
    sql.insert = "INSERT INTO " + name + " (" + listed(columns, "") + ") VALUES ("
        + placeholders(columns.size()) + ")";
    sql.update = "UPDATE " + name + " SET " + listed(columns, " = ?") + " WHERE \"id\" = ?";
    sql.remove = "DELETE FROM " + name + " WHERE \"id\" = ?";
    return sql;
}

std::string RowSql::selectWhere(const std::string& condition) const {
    return select + (condition.empty() ? "" : " WHERE " + condition) + " ORDER BY \"id\"";
}

} // namespace miterbook
