// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/table_store.h"

#include "store/cell.h"
#include "store/sql_error.h"

#include <QSqlError>

namespace miterbook {

namespace {

void bindAll(Statement& statement, const Cells& cells) {
    for (const QVariant& cell : cells)
        statement.bind(cell);
}

} // namespace

Result<void> TableStore::select(
    const std::string& sql, const Cells& keys, const Take& take) {
    auto statement = m_connection.prepare(sql);
    if (!statement)
        return statement.error();
    bindAll(*statement, keys);
    if (auto ran = statement->run(); !ran)
        return ran;
    Cells cells(m_shape.columns.size());
    while (true) {
        const auto there = statement->step();
        if (!there)
            return there.error();
        if (!*there)
            return {};
        for (std::size_t i = 0; i < cells.size(); ++i)
            cells[i] = statement->value(static_cast<int>(i));
        if (auto taken = take(cells); !taken)
            return taken;
    }
}

Result<void> TableStore::insert(const Cells& cells) {
    auto statement = m_connection.prepare(m_shape.sql.insert);
    if (!statement)
        return statement.error();
    bindAll(*statement, cells);
    auto ran = statement->run();
    if (!ran && isTakenId(statement->failure()))
        return changedMeanwhile(m_shape.noun);
    if (!ran && isTakenNumber(statement->failure())) {
        return Error{Fault::conflict, "The number of the " + std::string(m_shape.noun)
                + " has been taken in the meantime. Nothing was done."};
    }
    return ran;
}

Result<void> TableStore::update(const Cells& cells, std::int64_t id) {
    Cells all = cells;
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
        return changedMeanwhile(m_shape.noun);
    return {};
}

Error changedMeanwhile(std::string_view noun) {
    return {Fault::conflict,
        "The " + std::string(noun) + " has been changed in the meantime. Nothing was done."};
}

} // namespace miterbook
