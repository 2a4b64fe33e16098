// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/edit.h"
#include "store/connection.h"

#include <optional>
#include <string_view>

namespace miterbook {

/// The row of a table by its id; nothing when there is none.
Result<std::optional<AnyRow>> findAnyRow(
    Connection& connection, std::string_view table, std::int64_t id);

/// Writes the rows of a change, whatever their kind, after seeing that the book holds what the
/// change expects. Inside the caller's transaction. Errors: Fault::conflict, Fault::storage.
Result<void> writeChange(Connection& connection, const Change& change);

} // namespace miterbook
