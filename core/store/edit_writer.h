// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/edit.h"
#include "store/connection.h"

#include <string>

namespace miterbook {

/// Writes an edit's rows, its journal row and the highest id in one transaction; `at` is the time
/// for the journal. On an error the file is as it was. Errors: Fault::conflict when the book holds
/// something else than the edit expects or a row is still used, Fault::storage.
Result<void> writeEdit(Connection& connection, const std::string& at, const Edit& edit);

} // namespace miterbook
