// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/safety/reading.h"

#include "store/book_info.h"
#include "store/cell.h"
#include "store/file_header.h"
#include "store/schema.h"
#include "store/sqlite_guard.h"

namespace miterbook {

namespace {

Result<std::int64_t> countOf(Connection& connection, const std::string& what) {
    const auto count = connection.readOne("SELECT count(*) FROM " + what);
    if (!count)
        return count.error();
    return cellNumber(*count).value_or(0);
}

Result<void> readLastEdit(Connection& connection, BookSummary& summary) {
    auto statement = connection.prepare(
        "SELECT seq, at, sentence FROM journal ORDER BY seq DESC LIMIT 1");
    if (!statement)
        return statement.error();
    if (auto ran = statement->run(); !ran)
        return ran;
    const auto there = statement->step();
    if (!there)
        return there.error();
    if (!*there)
        return {};
    summary.edits = cellNumber(statement->value(0)).value_or(0);
    summary.lastAt = cellText(statement->value(1));
    summary.lastSentence = cellText(statement->value(2));
    return {};
}

} // namespace

Result<BookReading> openForReading(const std::string& path) {
    const auto format = readFileHeader(path, formatOf(schemaSteps()));
    if (!format)
        return format.error();
    auto connection = Connection::open(path, Access::readOnly);
    if (!connection)
        return connection.error();
    if (auto guarded = guardConnection(**connection); !guarded)
        return guarded.error();
    if (auto ours = checkSchema(**connection, schemaSteps(), *format); !ours)
        return ours.error();
    return BookReading{*format, std::move(connection).value()};
}

Result<BookSummary> summaryOf(const BookReading& book) {
    Connection& connection = *book.connection;
    const auto info = readBookInfo(connection);
    if (!info)
        return info.error();
    const auto houses = countOf(connection, "house");
    if (!houses)
        return houses.error();
    const auto plans = countOf(connection, "plan WHERE house IS NULL");
    if (!plans)
        return plans.error();
    BookSummary summary{book.format, info->created, *houses, *plans, 0, {}, {}};
    if (auto read = readLastEdit(connection, summary); !read)
        return read.error();
    return summary;
}

Result<BookSummary> readSummary(const std::string& path) {
    const auto book = openForReading(path);
    if (!book)
        return book.error();
    return summaryOf(*book);
}

} // namespace miterbook
