// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/connection.h"

#include "store/sql_error.h"

#include <QSqlError>
#include <QString>

#include <atomic>

namespace miterbook {

namespace {

/// How long a statement waits for another program's lock, in milliseconds.
constexpr int patience = 5000;

QString freshName() {
    static std::atomic<int> count = 0;
    return QStringLiteral("miterbook-%1").arg(++count);
}

QString connectOptions(Access access) {
    const QString options = QStringLiteral("QSQLITE_BUSY_TIMEOUT=%1").arg(patience);
    return access == Access::readOnly ? options + QStringLiteral(";QSQLITE_OPEN_READONLY")
                                      : options;
}

} // namespace

Connection::Connection(QSqlDatabase database, Permit permit)
    : m_database(std::move(database))
    , m_permit(std::move(permit)) {
}

Connection::~Connection() {
    m_prepared.clear();
    const QString name = m_database.connectionName();
    m_database.close();
    m_database = QSqlDatabase(); // removeDatabase wants the last handle gone
    QSqlDatabase::removeDatabase(name);
}

Result<std::unique_ptr<Connection>> Connection::open(
    const std::string& path, Access access, Permit permit) {
    QSqlDatabase database = QSqlDatabase::addDatabase(QStringLiteral("QSQLITE"), freshName());
    if (!database.isValid()) {
        return Error{Fault::storage,
            "The SQLite driver of Qt is not installed (on Debian: libqt6sql6-sqlite)."};
    }
    database.setDatabaseName(QString::fromStdString(path));
    database.setConnectOptions(connectOptions(access));
    std::unique_ptr<Connection> connection(new Connection(database, std::move(permit)));
    if (!database.open())
        return sqlError(database.lastError());
    return connection;
}

Result<SqlStatement> Connection::prepare(const std::string& sql) {
    if (m_permit && !m_permit(sql))
        return Error{Fault::storage, "The book could not be read or written."};
    std::unique_ptr<QSqlQuery>& query = m_prepared[sql];
    if (!query) {
        auto fresh = std::make_unique<QSqlQuery>(m_database);
        fresh->setForwardOnly(true);
        if (!fresh->prepare(QString::fromStdString(sql))) {
            const Error error = sqlError(fresh->lastError());
            m_prepared.erase(sql);
            return error;
        }
        query = std::move(fresh);
    }
    return SqlStatement(*query);
}

Result<void> Connection::run(const std::string& sql) {
    auto statement = prepare(sql);
    return statement ? statement->run() : statement.error();
}

Result<void> Connection::readEach(const std::string& sql, const SqlStatement::Take& take) {
    auto statement = prepare(sql);
    if (!statement)
        return statement.error();
    return statement->runEach(take);
}

Result<QVariant> Connection::readOne(const std::string& sql) {
    auto statement = prepare(sql);
    if (!statement)
        return statement.error();
    if (auto ran = statement->run(); !ran)
        return ran.error();
    auto there = statement->step();
    if (!there)
        return there.error();
    return *there ? statement->value(0) : QVariant();
}

} // namespace miterbook
