// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "store/connection.h"
#include "store/safety/salvage.h"

namespace miterbook {

/// Goes through the rows of a salvaged book: those that say nothing sensible or that are not there
/// are taken from the journal, and where it has not got them either, they go and are reported.
Result<void> mendRows(Connection& connection, SalvageReport& report);

/// Rows that name a row that is lost: the reference is emptied where it may be, else the row goes.
Result<void> mendReferences(Connection& connection, SalvageReport& report);

/// Writes into the journal, as one edit, what the salvage has changed against it, so that both say
/// the same again; then the highest id.
Result<void> closeSalvage(Connection& connection, const std::string& now);

} // namespace miterbook
