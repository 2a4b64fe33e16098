// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/safety/salvage_rows.h"

#include "store/cell.h"
#include "store/row_sql.h"

#include <optional>

namespace miterbook {

namespace {

/// A row that names one that is not there.
struct Dangling {
    std::string table;
    std::int64_t id = 0;
    std::string parent;
    std::int64_t key = 0; ///< which of the table's references
};

Result<std::vector<Dangling>> danglingRows(Connection& connection) {
    std::vector<Dangling> rows;
    const auto read = connection.readEach("PRAGMA foreign_key_check", [&](const SqlStatement& row) {
        rows.push_back({cellText(row.value(0)), row.value(1).toLongLong(), cellText(row.value(2)),
            row.value(3).toLongLong()});
        return true;
    });
    if (!read)
        return read.error();
    return rows;
}

/// The column of a reference if it may be empty.
Result<std::optional<std::string>> emptiableColumn(Connection& connection, const Dangling& row) {
    auto statement = connection.prepare(
        "SELECT f.\"from\" FROM pragma_foreign_key_list(?) f JOIN pragma_table_info(?) c "
        "ON c.name = f.\"from\" WHERE f.id = ? AND c.\"notnull\" = 0");
    if (!statement)
        return statement.error();
    statement->bind(textCell(row.table));
    statement->bind(textCell(row.table));
    statement->bind(numberCell(row.key));
    if (auto ran = statement->run(); !ran)
        return ran.error();
    const auto there = statement->step();
    if (!there)
        return there.error();
    return *there ? std::optional(cellText(statement->value(0))) : std::nullopt;
}

Result<void> mendReference(Connection& connection, const Dangling& row, SalvageReport& report) {
    const auto column = emptiableColumn(connection, row);
    if (!column)
        return column.error();
    const std::string sql = *column
        ? "UPDATE " + miterbook::quoted(row.table) + " SET " + miterbook::quoted(**column)
            + " = NULL WHERE \"id\" = ?"
        : "DELETE FROM " + miterbook::quoted(row.table) + " WHERE \"id\" = ?";
    auto statement = connection.prepare(sql);
    if (!statement)
        return statement.error();
    statement->bind(numberCell(row.id));
    if (auto ran = statement->run(); !ran)
        return ran;
    const std::string name = "The " + row.table + " with number " + std::to_string(row.id);
    report.lost.push_back(*column ? name + " no longer names its " + row.parent + ", which is lost."
                                  : name + " was left out: its " + row.parent + " is lost.");
    report.kept -= *column ? 0 : statement->changedRows();
    return {};
}

} // namespace

Result<void> mendReferences(Connection& connection, SalvageReport& report) {
    constexpr int deepest = 16; // a row below a row below a row...
    for (int round = 0; round < deepest; ++round) {
        const auto rows = danglingRows(connection);
        if (!rows)
            return rows.error();
        if (rows->empty())
            return {};
        for (const Dangling& row : *rows) {
            if (auto mended = mendReference(connection, row, report); !mended)
                return mended;
        }
    }
    return Error{Fault::storage, "What is left of the book does not hang together."};
}

} // namespace miterbook
