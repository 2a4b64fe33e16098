// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/sql_error.h"

#include <QSqlError>

#include <sqlite3.h>

namespace miterbook {

namespace {

/// SQLite's extended result code; 0 where the driver gives none.
int codeOf(const QSqlError& error) {
    return error.nativeErrorCode().toInt();
}

Error storage(std::string sentence) {
    return {Fault::storage, std::move(sentence)};
}

} // namespace

Error sqlError(const QSqlError& error) {
    return sqliteError(codeOf(error), error.databaseText().toStdString());
}

Error sqliteError(int code, const std::string& detail) {
    switch (code & 0xff) {
    case SQLITE_BUSY:
    case SQLITE_LOCKED:
        return storage("The book is being written by another program. Try again in a moment.");
    case SQLITE_READONLY:
    case SQLITE_PERM:
        return storage("The book cannot be written: its file or folder is read-only.");
    case SQLITE_FULL:
        return storage("The disk is full. Nothing was changed.");
    case SQLITE_IOERR:
        return storage("The disk could not be read or written (" + detail + ").");
    case SQLITE_CANTOPEN:
        return storage("The book file or its journal cannot be opened (" + detail + ").");
    case SQLITE_CORRUPT:
    case SQLITE_NOTADB:
        return storage("The book file is damaged (" + detail + ").");
    case SQLITE_NOMEM:
        return storage("There is not enough memory to read the book.");
    case SQLITE_CONSTRAINT:
        return {Fault::conflict, "The book does not allow that (" + detail + ")."};
    default:
        return storage("The book could not be read or written (" + detail + ").");
    }
}

bool isBrokenReference(const QSqlError& error) {
    return codeOf(error) == SQLITE_CONSTRAINT_FOREIGNKEY;
}

bool isTakenNumber(const QSqlError& error) {
    return codeOf(error) == SQLITE_CONSTRAINT_UNIQUE;
}

bool isTakenId(const QSqlError& error) {
    return codeOf(error) == SQLITE_CONSTRAINT_PRIMARYKEY
        || codeOf(error) == SQLITE_CONSTRAINT_ROWID;
}

} // namespace miterbook
