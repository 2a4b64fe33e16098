// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/statement.h"

#include "store/sql_error.h"

#include <QSqlError>

namespace miterbook {

SqlStatement::~SqlStatement() {
    if (m_query)
        m_query->finish(); // an unfinished statement would keep the file locked
}

Result<void> SqlStatement::run() {
    if (!m_query->exec())
        return sqlError(m_query->lastError());
    return {};
}

Result<void> SqlStatement::runEach(const Take& take) {
    if (auto ran = run(); !ran)
        return ran;
    while (true) {
        const auto there = step();
        if (!there)
            return there.error();
        if (!*there)
            return {};
        const auto goOn = take(*this);
        if (!goOn)
            return goOn.error();
        if (!*goOn)
            return {};
    }
}

Result<bool> SqlStatement::step() {
    if (m_query->next())
        return true;
    // Qt says "no more rows" and "failed" with the same false.
    if (m_query->lastError().isValid())
        return sqlError(m_query->lastError());
    return false;
}

QSqlError SqlStatement::failure() const {
    return m_query->lastError();
}

} // namespace miterbook
