// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/safety/salvage_tables.h"

#include "job/edit_json.h"
#include "store/cell.h"
#include "store/row_sql.h"
#include "store/safety/tolerant_scan.h"

#include <algorithm>
#include <map>

namespace miterbook {

namespace {

using Names = std::vector<std::string>;

Result<Names> firstColumn(Connection& connection, const std::string& sql, int column) {
    Names words;
    const auto read = connection.readEach(sql, [&](const SqlStatement& row) {
        words.push_back(cellText(row.value(column)));
        return true;
    });
    if (!read)
        return read.error();
    return words;
}

/// The columns of a table between quotes, "id" first.
Result<Names> columnsOf(Connection& connection, const std::string& table) {
    auto columns = firstColumn(
        connection, "PRAGMA table_info(" + miterbook::quoted(table) + ")", 1);
    if (!columns)
        return columns;
    for (std::string& column : *columns)
        column = miterbook::quoted(column);
    const auto id = std::ranges::find(*columns, miterbook::quoted("id"));
    if (id == columns->end())
        return Error{Fault::storage, "The table " + table + " has no numbers."};
    std::rotate(columns->begin(), id, id + 1);
    return columns;
}

std::string insertSql(const std::string& table, const Names& columns) {
    std::string names;
    std::string marks;
    for (const std::string& column : columns) {
        names += (names.empty() ? "" : ", ") + column;
        marks += marks.empty() ? "?" : ", ?";
    }
    return "INSERT INTO " + miterbook::quoted(table) + " (" + names + ") VALUES (" + marks + ")";
}

Result<void> insertCells(Connection& to, const std::string& sql, const Cells& cells) {
    auto statement = to.prepare(sql);
    if (!statement)
        return statement.error();
    for (const QVariant& cell : cells)
        statement->bind(cell);
    return statement->run();
}

Result<void> copyTable(
    Connection& from, Connection& to, const std::string& table, SalvageReport& report) {
    const auto columns = columnsOf(to, table);
    if (!columns)
        return columns.error();
    const std::string sql = insertSql(table, *columns);
    const auto scanned = scanAround(
        from, miterbook::quoted(table), *columns, [&](const Cells& cells) {
            if (insertCells(to, sql, cells))
                ++report.kept;
        });
    if (!scanned) // the journal may still have its rows
        report.lost.push_back("The table " + table + " could not be read.");
    return {};
}

struct RawEntry {
    std::string at;
    std::string sentence;
    std::string changes;
};

Result<void> insertEntry(Connection& to, std::int64_t seq, const RawEntry& entry) {
    return insertCells(to, "INSERT INTO journal (seq, at, sentence, changes) VALUES (?, ?, ?, ?)",
        {numberCell(seq), textCell(entry.at), textCell(entry.sentence), textCell(entry.changes)});
}

} // namespace

Result<std::vector<std::string>> tablesOf(Connection& connection) {
    return firstColumn(connection,
        "SELECT name FROM sqlite_schema WHERE type = 'table' "
        "AND name NOT IN ('book_info', 'journal') AND name NOT LIKE 'sqlite_%' ORDER BY name",
        0);
}

Result<void> copyTables(Connection& from, Connection& to, SalvageReport& report) {
    const auto tables = tablesOf(to);
    if (!tables)
        return tables.error();
    for (const std::string& table : *tables) {
        if (auto copied = copyTable(from, to, table, report); !copied)
            return copied;
    }
    return {};
}

Result<void> copyJournal(Connection& from, Connection& to, const std::string& now) {
    std::map<std::int64_t, RawEntry> entries;
    const auto scanned = scanAround(
        from, "journal", {"seq", "at", "sentence", "changes"}, [&](const Cells& cells) {
            RawEntry entry{cellText(cells[1]), cellText(cells[2]), cellText(cells[3])};
            if (changesFromText(entry.changes))
                entries.emplace(cells[0].toLongLong(), std::move(entry));
        });
    (void)scanned; // a journal that cannot be read at all is one without entries
    std::int64_t next = 1;
    for (const auto& [seq, entry] : entries) {
        for (; next < seq; ++next) {
            if (auto filled = insertEntry(to, next, {now, "(lost by damage)", "[]"}); !filled)
                return filled;
        }
        if (auto copied = insertEntry(to, seq, entry); !copied)
            return copied;
        next = seq + 1;
    }
    return {};
}

} // namespace miterbook
