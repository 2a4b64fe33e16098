// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/table_store.h"

#include "job/row_shape.h"
#include "store/cell.h"
#include "store/sql_error.h"

#include <QSqlError>

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

RowsAsked RowsAsked::ofPlan(Id<Plan> plan) {
    return {"\"plan\" = ?", {numberCell(plan.value())}};
}

const RowSql& sqlOf(std::size_t kind) {
    static const auto all = [] {
        std::vector<RowSql> made;
        for (const RowShape* shape : rowShapes())
            made.push_back(rowSql(shape->table, shape->names()));
        return made;
    }();
    return all[kind];
}

TableStore::TableStore(Connection& connection, std::size_t kind)
    : m_connection(connection)
    , m_kind(kind)
    , m_shape(*rowShapes()[kind])
    , m_sql(sqlOf(kind)) {
}

Result<void> TableStore::read(const RowsAsked& asked, const std::function<void(AnyRow&&)>& take) {
    auto statement = m_connection.prepare(m_sql.selectWhere(asked.condition));
    if (!statement)
        return statement.error();
    bindAll(*statement, asked.keys);
    return statement->runEach([&](const SqlStatement& held) -> Result<bool> {
        RowDraft draft(m_kind);
        if (auto sound = readCells(m_shape, held, draft.data()); !sound)
            return sound.error();
        take(std::move(draft).take());
        return true;
    });
}

Result<std::optional<AnyRow>> TableStore::find(std::int64_t id) {
    std::optional<AnyRow> found;
    const auto done = read(
        {"\"id\" = ?", {numberCell(id)}}, [&found](AnyRow&& row) { found = std::move(row); });
    if (!done)
        return done.error();
    return found;
}

Result<void> TableStore::insert(const AnyRow& row) {
    auto statement = m_connection.prepare(m_sql.insert);
    if (!statement)
        return statement.error();
    bindAll(*statement, cellsOf(m_shape, row.data()));
    auto ran = statement->run();
    if (!ran && isTakenId(statement->failure()))
        return changedMeanwhile(m_shape.noun);
    if (!ran && isTakenNumber(statement->failure())) {
        return Error{Fault::conflict,
            "The number of the " + std::string(m_shape.noun)
                + " has been taken in the meantime. Nothing was done."};
    }
    return ran;
}

Result<void> TableStore::update(const AnyRow& row) {
    Cells all = cellsOf(m_shape, row.data());
    all.push_back(numberCell(row.id()));
    return changeOne(m_sql.update, all);
}

Result<void> TableStore::remove(std::int64_t id) {
    return changeOne(m_sql.remove, {numberCell(id)});
}

Result<void> TableStore::changeOne(const std::string& sql, const Cells& cells) {
    auto statement = m_connection.prepare(sql);
    if (!statement)
        return statement.error();
    bindAll(*statement, cells);
    if (auto ran = statement->run(); !ran)
        return ran;
    if (statement->changedRows() != 1)
        return changedMeanwhile(m_shape.noun);
    return {};
}

Error changedMeanwhile(std::string_view noun) {
    return {Fault::conflict,
        "The " + std::string(noun) + " has been changed in the meantime. Nothing was done."};
}

} // namespace miterbook
