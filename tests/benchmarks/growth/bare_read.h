// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <vector>

namespace miterbook {

/// Reads every column of every row that some statements give, by SQLite's C API alone. Value: rows.
long bareRead(const std::string& path, const std::vector<std::string>& statements);

/// A whole-table SELECT for each table that the book keeps in memory, and the sums of its time.
std::vector<std::string> openingStatements();

} // namespace miterbook
