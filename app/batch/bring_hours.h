// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "batch/console.h"
#include "batch/opened_book.h"

#include <string>

namespace miterbook {

/// Brings a file of hours into the book. With rows that cannot be read nothing is brought in, or
/// the good rows when asked so; each bad row is said on console.err. What the book has already is
/// left.
Result<void> bringHours(
    OpenedBook& opened, const std::string& path, bool goodRows, Console& console);

} // namespace miterbook
