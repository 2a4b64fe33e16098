// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/safety/old_book.h"

#include "job/any_row.h"
#include "job/edit_json.h"
#include "job/row_json.h"
#include "job/whole_edit.h"
#include "store/book_info.h"
#include "store/cell.h"
#include "store/row_sql.h"
#include "store/schema.h"
#include "store/sqlite_guard.h"
#include "store/table_store.h"
#include "store/transaction.h"
#include "support/small_book.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <set>

namespace miterbook {

namespace {

std::set<std::string> columnsThen(Connection& connection, std::string_view table) {
    auto statement = connection.prepare("PRAGMA table_info(" + miterbook::quoted(table) + ")");
    std::set<std::string> columns;
    EXPECT_TRUE(statement->run().ok());
    while (*statement->step())
        columns.insert(cellText(statement->value(1)));
    return columns;
}

void insertThen(Connection& connection, const AnyRow& row) {
    const RowShape& shape = row.shape();
    const auto there = columnsThen(connection, shape.table);
    std::string names;
    std::string marks;
    Cells bound;
    for (const FieldShape& field : shape.fields) {
        if (!there.contains(std::string(field.name)))
            continue;
        names += (names.empty() ? "" : ", ") + miterbook::quoted(field.name);
        marks += marks.empty() ? "?" : ", ?";
        bound.push_back(toCell(*field.value, field.in(row.data())));
    }
    auto statement = connection.prepare("INSERT INTO " + miterbook::quoted(shape.table) + " ("
        + names + ") VALUES (" + marks + ")");
    for (const QVariant& cell : bound)
        statement->bind(cell);
    const auto ran = statement->run();
    EXPECT_TRUE(ran.ok()) << (ran ? "" : ran.error().sentence);
}

/// The changes as JSON without the fields that came later.
std::string changesThen(Connection& connection, const Edit& edit) {
    Json changes = *parseJson(changesToText(edit.changes));
    for (Json& change : changes) {
        const auto there = columnsThen(connection, change["kind"].get<std::string>());
        Json row = Json::object();
        for (const auto& [name, value] : change["after"].items()) {
            if (there.contains(name))
                row[name] = value;
        }
        change["after"] = row;
    }
    return jsonText(changes);
}

void addJournal(Connection& connection, const std::string& changes) {
    auto statement = connection.prepare("INSERT INTO journal (at, sentence, changes) "
                                        "VALUES ('2026-01-02T12:00:00Z', 'Begin the book', ?)");
    statement->bind(textCell(changes));
    EXPECT_TRUE(statement->run().ok());
}

} // namespace

void writeOldBook(const std::string& path, int format) {
    writeOldBook(path, format, smallBook());
}

void writeOldBook(const std::string& path, int format, const Book& book) {
    auto opened = Connection::open(path, Access::readWrite);
    ASSERT_TRUE(opened.ok());
    Connection& connection = **opened;
    ASSERT_TRUE(guardConnection(connection).ok());
    Transaction transaction(connection);
    ASSERT_TRUE(transaction.begin().ok());
    ASSERT_TRUE(markAsBook(connection).ok());
    std::vector<SchemaStep> steps = schemaSteps();
    std::erase_if(steps, [&](const SchemaStep& step) { return step.number > format; });
    ASSERT_TRUE(runSteps(connection, steps, 0).ok());
    const Edit edit = wholeEdit(book, "Begin the book");
    ASSERT_TRUE(insertBookInfo(connection, {format, "2026-01-02T12:00:00Z", highestId(edit)}).ok());
    for (const Change& change : edit.changes)
        insertThen(connection, change.row());
    addJournal(connection, changesThen(connection, edit));
    ASSERT_TRUE(transaction.commit().ok());
}

} // namespace miterbook
