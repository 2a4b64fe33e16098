// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/sqlite_guard.h"

#include "store/cell.h"
#include "store/file_header.h"

#include <QSqlDriver>

#include <sqlite3.h>

#include <map>
#include <mutex>

namespace miterbook {

namespace {

bool configure(sqlite3* handle, int option, int value) {
    return sqlite3_db_config(handle, option, value, nullptr) == SQLITE_OK;
}

bool harden(sqlite3* handle) {
    constexpr int longestValue = 256 * 1024 * 1024; // bytes of one text or row
    constexpr int longestStatement = 1024 * 1024;
    sqlite3_limit(handle, SQLITE_LIMIT_LENGTH, longestValue);
    sqlite3_limit(handle, SQLITE_LIMIT_SQL_LENGTH, longestStatement);
    sqlite3_limit(handle, SQLITE_LIMIT_ATTACHED, 1); // a copy is made through one
    sqlite3_limit(handle, SQLITE_LIMIT_TRIGGER_DEPTH, 1);
    return configure(handle, SQLITE_DBCONFIG_DEFENSIVE, 1)
        && configure(handle, SQLITE_DBCONFIG_TRUSTED_SCHEMA, 0)
        && configure(handle, SQLITE_DBCONFIG_DQS_DDL, 0)
        && configure(handle, SQLITE_DBCONFIG_DQS_DML, 0)
        && configure(handle, SQLITE_DBCONFIG_ENABLE_TRIGGER, 0)
        && configure(handle, SQLITE_DBCONFIG_ENABLE_VIEW, 0)
        && configure(handle, SQLITE_DBCONFIG_ENABLE_FKEY, 1);
}

using SchemaRows = std::map<std::string, std::string>;

/// "table stick" -> its SQL. The planner's own statistics are no part of the schema.
Result<SchemaRows> schemaRows(Connection& connection) {
    SchemaRows rows;
    const auto read = connection.readEach("SELECT type || ' ' || name, coalesce(sql, '') "
                                          "FROM sqlite_schema WHERE name NOT LIKE 'sqlite_stat%'",
        [&](const SqlStatement& row) {
            rows[cellText(row.value(0))] = cellText(row.value(1));
            return true;
        });
    if (!read)
        return read.error();
    return rows;
}

/// The schema that steps make when they are run in memory.
Result<SchemaRows> rowsMadeBy(const std::vector<SchemaStep>& steps) {
    auto memory = Connection::open(":memory:", Access::readWrite);
    if (!memory)
        return memory.error();
    if (auto ran = runSteps(**memory, steps, 0); !ran)
        return ran.error();
    return schemaRows(**memory);
}

/// What the schema must be in a format; made once for each that is met.
Result<SchemaRows> expectedRows(std::vector<SchemaStep> steps, int format) {
    static std::mutex guard;
    static std::map<std::string, SchemaRows> made;
    std::erase_if(steps, [&](const SchemaStep& step) { return step.number > format; });
    std::string all;
    for (const SchemaStep& step : steps)
        all += step.sql;
    const std::lock_guard lock(guard);
    if (const auto it = made.find(all); it != made.end())
        return it->second;
    auto rows = rowsMadeBy(steps);
    if (rows)
        made.emplace(std::move(all), *rows);
    return rows;
}

Error foreign(const std::string& what) {
    return {Fault::notOurs,
        "The file is not a Miterbook book as this program makes them: " + what
            + ". It was not opened."};
}

Result<void> compare(const SchemaRows& held, const SchemaRows& expected) {
    for (const auto& [name, sql] : held) {
        const auto it = expected.find(name);
        if (it == expected.end())
            return foreign("somebody added the " + name);
        if (it->second != sql)
            return foreign("somebody changed the " + name);
    }
    for (const auto& [name, sql] : expected) {
        if (!held.contains(name))
            return foreign("the " + name + " is missing");
    }
    return {};
}

} // namespace

sqlite3* handleOf(Connection& connection) {
    const auto source = connection.readOne("SELECT sqlite_source_id()");
    if (!source || cellText(*source) != sqlite3_sourceid())
        return nullptr;
    const QVariant handle = connection.database().driver()->handle();
    if (!handle.isValid() || qstrcmp(handle.typeName(), "sqlite3*") != 0)
        return nullptr;
    return *static_cast<sqlite3* const*>(handle.constData());
}

Result<void> guardConnection(Connection& connection) {
    sqlite3* handle = handleOf(connection);
    if (!handle || !harden(handle)) {
        return Error{Fault::storage,
            "The SQLite library on this machine cannot open books safely; none was opened."};
    }
    // A rollback journal, not a write-ahead log: a book is one file that people copy, keep in
    // synced folders and open from read-only places, where a log beside it is lost or refused.
    // EXTRA syncs the folder after the journal is gone: with FULL alone a power failure right
    // behind a commit could bring the journal back and undo the commit.
    for (const char* pragma :
        {"PRAGMA cell_size_check = ON", "PRAGMA mmap_size = 0", "PRAGMA foreign_keys = ON",
            "PRAGMA synchronous = EXTRA", "PRAGMA journal_mode = DELETE"}) {
        if (auto ran = connection.run(pragma); !ran)
            return ran;
    }
    return {};
}

Result<void> checkSchema(Connection& connection, const std::vector<SchemaStep>& steps, int format) {
    const auto held = schemaRows(connection);
    if (!held)
        return held.error();
    const auto expected = expectedRows(steps, format);
    if (!expected)
        return expected.error();
    return compare(*held, *expected);
}

Result<void> markAsBook(Connection& connection) {
    return connection.run("PRAGMA application_id = " + std::to_string(bookFileMark));
}

Result<void> copyInto(Connection& connection, const std::string& path) {
    auto statement = connection.prepare("VACUUM INTO ?");
    if (!statement)
        return statement.error();
    statement->bind(textCell(path));
    return statement->run();
}

Result<void> checkIntegrity(Connection& connection) {
    const auto pages = connection.readOne("PRAGMA integrity_check(1)");
    if (!pages)
        return pages.error();
    if (const std::string found = cellText(*pages); found != "ok")
        return Error{Fault::storage, "The book file is damaged (" + found + ")."};
    const auto dangling = connection.readOne("PRAGMA foreign_key_check");
    if (!dangling)
        return dangling.error();
    if (!dangling->isNull()) {
        return Error{Fault::storage,
            "The book file is damaged: a " + cellText(*dangling)
                + " names something that is not in the book."};
    }
    return {};
}

} // namespace miterbook
