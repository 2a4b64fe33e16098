// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/result.h"

#include <QSqlQuery>
#include <QVariant>

#include <functional>
#include <utility>

namespace miterbook {

/// One use of a prepared statement: bind in order, run, step through the rows. Letting go of it
/// makes the statement ready for its next use.
class SqlStatement {
public:
    explicit SqlStatement(QSqlQuery& query)
        : m_query(&query) {}
    SqlStatement(SqlStatement&& other) noexcept
        : m_query(std::exchange(other.m_query, nullptr))
        , m_bound(other.m_bound) {}
    SqlStatement& operator=(SqlStatement&&) = delete;
    SqlStatement(const SqlStatement&) = delete;
    SqlStatement& operator=(const SqlStatement&) = delete;
    ~SqlStatement();

    /// Binds the next placeholder.
    void bind(const QVariant& value) { m_query->bindValue(m_bound++, value); }
    /// Errors: the sentence of sqlError; failure() tells more.
    Result<void> run();
    /// Takes the row that the statement stands at. False ends the reading; so does an error.
    using Take = std::function<Result<bool>(const SqlStatement& row)>;
    /// Runs the statement and gives each row to `take`.
    Result<void> runEach(const Take& take);
    /// Goes to the next row; false when there is none.
    Result<bool> step();
    /// A column of the row, from 0.
    QVariant value(int column) const { return m_query->value(column); }
    /// How many rows the statement changed.
    int changedRows() const { return m_query->numRowsAffected(); }
    QSqlError failure() const;

private:
    QSqlQuery* m_query;
    int m_bound = 0;
};

} // namespace miterbook
