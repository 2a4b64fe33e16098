// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/book_info.h"

#include "store/cell.h"

namespace miterbook {

namespace {

Result<void> runWith(
    Connection& connection, const std::string& sql, std::initializer_list<QVariant> values) {
    auto statement = connection.prepare(sql);
    if (!statement)
        return statement.error();
    for (const QVariant& value : values)
        statement->bind(value);
    return statement->run();
}

} // namespace

Result<BookInfo> readBookInfo(Connection& connection) {
    auto statement = connection.prepare("SELECT format, created, last_id FROM book_info");
    if (!statement)
        return statement.error();
    if (auto ran = statement->run(); !ran)
        return ran.error();
    const auto there = statement->step();
    if (!there)
        return there.error();
    BookInfo info;
    if (!*there || !readCell(statement->value(0), info.format)
        || !readCell(statement->value(1), info.created)
        || !readCell(statement->value(2), info.lastId))
        return Error{Fault::storage, "The book file is damaged: it does not say what it is."};
    return info;
}

Result<void> insertBookInfo(Connection& connection, const BookInfo& info) {
    return runWith(connection,
        "INSERT INTO book_info (id, format, created, last_id) VALUES (1, ?, ?, ?)",
        {toCell(info.format), toCell(info.created), toCell(info.lastId)});
}

Result<void> writeFormat(Connection& connection, int format) {
    return runWith(connection, "UPDATE book_info SET format = ?", {toCell(format)});
}

Result<void> raiseLastId(Connection& connection, std::int64_t id) {
    return runWith(
        connection, "UPDATE book_info SET last_id = ? WHERE last_id < ?", {toCell(id), toCell(id)});
}

} // namespace miterbook
