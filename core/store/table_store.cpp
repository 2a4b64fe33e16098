// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/table_store.h"

#include "job/any_row.h"
#include "store/cell.h"
#include "store/sql_error.h"

#include <QSqlError>

#include <map>

namespace miterbook {

namespace {

void bindAll(SqlStatement& statement, const Cells& cells) {
    for (const QVariant& cell : cells)
        statement.bind(cell);
}

Cells cellsOf(const RowShape& shape, const void* row) {
    Cells cells;
    cells.reserve(shape.fields.size() + 1); // an update binds the id after them
    for (const FieldShape& field : shape.fields)
        cells.push_back(toCell(*field.value, field.in(row)));
    return cells;
}

/// What is said of a cell that holds no such value.
Error damagedCell(const RowShape& shape, const SqlStatement& statement, int column) {
    constexpr std::size_t longest = 60;
    const QVariant cell = statement.value(column);
    const std::string found = cell.isNull() ? "nothing" : cellText(cell).substr(0, longest);
    return {Fault::storage,
        "The book file is damaged or from a newer program: the "
            + std::string(shape.fields[static_cast<std::size_t>(column)].name) + " of "
            + std::string(shape.noun) + " " + cellText(statement.value(0)) + " is \"" + found
            + "\"."};
}

Result<void> readCells(const RowShape& shape, const SqlStatement& statement, void* row) {
    int column = 0;
    for (const FieldShape& field : shape.fields) {
        if (!readCell(statement.value(column), *field.value, field.in(row)))
            return damagedCell(shape, statement, column);
        ++column;
    }
    return {};
}

} // namespace

const TableShape& tableShape(const RowShape& row) {
    static const auto all = [] {
        std::map<std::string_view, TableShape> made;
        forEachRowKind([&]<class Row>(RowKind<Row>) {
            const RowShape& shape = rowShape<Row>();
            made[shape.table] = {&shape, rowSql(shape.table, shape.names())};
        });
        return made;
    }();
    return all.at(row.table);
}

Result<void> TableStore::read(
    const std::string& sql, const Cells& keys, void* row, const std::function<void()>& keep) {
    auto statement = m_connection.prepare(sql);
    if (!statement)
        return statement.error();
    bindAll(*statement, keys);
    return statement->runEach([&](const SqlStatement& held) -> Result<bool> {
        if (auto sound = readCells(*m_shape.row, held, row); !sound)
            return sound.error();
        keep();
        return true;
    });
}

Result<bool> TableStore::readOne(std::int64_t id, void* row) {
    bool found = false;
    const auto done = read(
        m_shape.sql.selectOne, {numberCell(id)}, row, [&found] { found = true; });
    if (!done)
        return done.error();
    return found;
}

Result<void> TableStore::insert(const void* row) {
    auto statement = m_connection.prepare(m_shape.sql.insert);
    if (!statement)
        return statement.error();
    bindAll(*statement, cellsOf(*m_shape.row, row));
    auto ran = statement->run();
    if (!ran && isTakenId(statement->failure()))
        return changedMeanwhile(m_shape.row->noun);
    if (!ran && isTakenNumber(statement->failure())) {
        return Error{Fault::conflict,
            "The number of the " + std::string(m_shape.row->noun)
                + " has been taken in the meantime. Nothing was done."};
    }
    return ran;
}

Result<void> TableStore::update(const void* row, std::int64_t id) {
    Cells all = cellsOf(*m_shape.row, row);
    all.push_back(numberCell(id));
    return changeOne(m_shape.sql.update, all);
}

Result<void> TableStore::remove(std::int64_t id) {
    return changeOne(m_shape.sql.remove, {numberCell(id)});
}

Result<void> TableStore::changeOne(const std::string& sql, const Cells& cells) {
    auto statement = m_connection.prepare(sql);
    if (!statement)
        return statement.error();
    bindAll(*statement, cells);
    if (auto ran = statement->run(); !ran)
        return ran;
    if (statement->changedRows() != 1)
        return changedMeanwhile(m_shape.row->noun);
    return {};
}

Error changedMeanwhile(std::string_view noun) {
    return {Fault::conflict,
        "The " + std::string(noun) + " has been changed in the meantime. Nothing was done."};
}

} // namespace miterbook
