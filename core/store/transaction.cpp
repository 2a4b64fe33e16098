// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/transaction.h"

#include "store/sql_error.h"

#include <QSqlError>

namespace miterbook {

Transaction::~Transaction() {
    if (!m_open)
        return;
    // Not through the connection's permit: taking back must not be refused. SQLite has already
    // rolled back after some errors; then there is nothing left to do and that is no failure.
    QSqlQuery query(m_connection.database());
    query.exec(QStringLiteral("ROLLBACK"));
}

Result<void> Transaction::begin() {
    auto begun = m_connection.run("BEGIN IMMEDIATE");
    m_open = begun.ok();
    return begun;
}

Result<void> Transaction::commit() {
    auto statement = m_connection.prepare("COMMIT");
    if (!statement)
        return statement.error();
    auto committed = statement->run();
    if (committed)
        m_open = false;
    else
        m_brokenReference = isBrokenReference(statement->failure());
    return committed;
}

} // namespace miterbook
