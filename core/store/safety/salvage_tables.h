// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "store/connection.h"
#include "store/safety/salvage.h"

#include <string>
#include <vector>

namespace miterbook {

/// The tables of a book but book_info and the journal, as its schema names them.
Result<std::vector<std::string>> tablesOf(Connection& connection);

/// Copies every row that can be read, cell by cell, into the tables of the same names.
Result<void> copyTables(Connection& from, Connection& to, SalvageReport& report);

/// Copies the journal's readable entries. Those that are lost become empty ones that say so, so
/// that the numbers go on without gaps.
Result<void> copyJournal(Connection& from, Connection& to, const std::string& now);

} // namespace miterbook
