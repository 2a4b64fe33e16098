// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/result.h"

#include <string>

class QSqlError;

namespace miterbook {

/// The user's sentence for a failed statement, by its kind: busy, read-only, disk full, damaged...
Error sqlError(const QSqlError& error);
/// The same of SQLite's own result code and text.
Error sqliteError(int code, const std::string& detail);

/// Whether a number that is given once only was given already.
bool isTakenNumber(const QSqlError& error);
/// Whether the statement failed because a reference would have been left dangling.
bool isBrokenReference(const QSqlError& error);
/// Whether the statement failed because there is a row with that id already.
bool isTakenId(const QSqlError& error);

} // namespace miterbook
