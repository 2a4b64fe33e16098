// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/result.h"
#include "store/connection.h"
#include "store/schema.h"
#include "store/store_options.h"

#include <string>

namespace miterbook {

/// Makes the tables of a new book and its book_info, in one transaction.
Result<void> makeTables(
    Connection& connection, const std::vector<SchemaStep>& steps, const Clock& clock);

/// Copies the book among its backups, then runs the steps above `format` in one transaction. On an
/// error the book is as it was.
Result<void> bringUp(Connection& connection, const std::vector<SchemaStep>& steps,
    const std::string& path, int format, const Clock& clock);

} // namespace miterbook
