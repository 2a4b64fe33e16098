// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/result.h"
#include "store/statement.h"
#include "store/store_options.h"

#include <QSqlDatabase>

#include <memory>
#include <string>
#include <string_view>
#include <unordered_map>

namespace miterbook {

enum class Access { readWrite, readOnly };

/// One connection to one book file, with its prepared statements. To be used by one thread.
class Connection {
public:
    /// Opens a file, or a new database in memory for the path ":memory:". The file is not read yet.
    /// Errors: no database driver; the file cannot be opened.
    static Result<std::unique_ptr<Connection>> open(
        const std::string& path, Access access, Permit permit = {});
    ~Connection();
    Connection(const Connection&) = delete;
    Connection& operator=(const Connection&) = delete;

    /// The prepared statement of a text; prepared once. At most one of a text is in use at a time.
    Result<SqlStatement> prepare(const std::string& sql);
    /// Runs one statement that binds nothing; its rows, if any, are not read.
    Result<void> run(const std::string& sql);
    /// Runs one statement that binds nothing and gives each row to `take` until it says false.
    Result<void> readEach(const std::string& sql, const SqlStatement::Take& take);
    /// Runs one statement and reads the first column of its first row; null where there is none.
    Result<QVariant> readOne(const std::string& sql);

    const QSqlDatabase& database() const { return m_database; }

private:
    Connection(QSqlDatabase database, Permit permit);

    QSqlDatabase m_database;
    Permit m_permit;
    std::unordered_map<std::string, std::unique_ptr<QSqlQuery>> m_prepared;
};

} // namespace miterbook
