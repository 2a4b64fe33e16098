// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/result.h"
#include "store/connection.h"
#include "store/schema.h"

#include <string>
#include <vector>

struct sqlite3;

namespace miterbook {

/// The driver's own handle; nullptr when the driver brings another SQLite than the one we link,
/// whose handles must not be touched.
sqlite3* handleOf(Connection& connection);

/// Makes a connection safe against what a stranger may have put into a book, and durable against
/// kill and power loss. To be called before anything of the file is read.
Result<void> guardConnection(Connection& connection);

/// Refuses a book whose tables are not exactly those that `steps` up to `format` make: nothing
/// missing, nothing added, no trigger, no view. Errors: Fault::notOurs naming what differs.
Result<void> checkSchema(Connection& connection, const std::vector<SchemaStep>& steps, int format);

/// Writes the mark of a book of ours.
Result<void> markAsBook(Connection& connection);

/// A whole copy of the book in a new file; both stay usable. Errors: the file is there already.
Result<void> copyInto(Connection& connection, const std::string& path);

/// Reads every page and reference. Errors: Fault::storage with the first damage found.
Result<void> checkIntegrity(Connection& connection);

} // namespace miterbook
