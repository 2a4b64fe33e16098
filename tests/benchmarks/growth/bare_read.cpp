// SPDX-License-Identifier: GPL-3.0-or-later
#include "growth/bare_read.h"

#include "job/book.h"
#include "store/table_store.h"

#include <sqlite3.h>

namespace miterbook {

namespace {

/// Looks at each column as a reader would, so that SQLite has to bring it.
std::size_t touchRow(sqlite3_stmt* statement, int columns) {
    std::size_t bytes = 0;
    for (int i = 0; i < columns; ++i) {
        if (sqlite3_column_type(statement, i) == SQLITE_TEXT) {
            (void)sqlite3_column_text(statement, i);
            bytes += static_cast<std::size_t>(sqlite3_column_bytes(statement, i));
        } else {
            bytes += static_cast<std::size_t>(sqlite3_column_int64(statement, i) & 1);
        }
    }
    return bytes;
}

template <class Tables>
void addSelects(const Tables& tables, std::vector<std::string>& statements) {
    tables.forEach([&]<class Row>(const Table<Row>&) {
        statements.push_back(sqlOf(kindOf<Row>).selectWhere({}));
    });
}

} // namespace

long bareRead(const std::string& path, const std::vector<std::string>& statements) {
    sqlite3* handle = nullptr;
    sqlite3_open_v2(path.c_str(), &handle, SQLITE_OPEN_READONLY, nullptr);
    long rows = 0;
    std::size_t bytes = 0;
    for (const std::string& sql : statements) {
        sqlite3_stmt* statement = nullptr;
        sqlite3_prepare_v2(handle, sql.c_str(), -1, &statement, nullptr);
        const int columns = sqlite3_column_count(statement);
        while (sqlite3_step(statement) == SQLITE_ROW) {
            bytes += touchRow(statement, columns);
            ++rows;
        }
        sqlite3_finalize(statement);
    }
    sqlite3_close(handle);
    return bytes == 0 ? 0 : rows;
}

std::vector<std::string> openingStatements() {
    std::vector<std::string> statements;
    const Book book;
    const PriceTables& prices = book.prices;
    addSelects(prices, statements);
    addSelects(book.jobs, statements);
    statements.push_back("SELECT house, work, task, kind, sum(\"time\"), sum(done) "
                         "FROM time_entry GROUP BY house, work, task, kind");
    return statements;
}

} // namespace miterbook
