// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "batch/console.h"
#include "batch/opened_book.h"

#include <string>

namespace miterbook {

/// Brings a file of measures into a house. With rows that cannot be read nothing is brought in, or
/// the good rows when asked so; each bad row is said on console.err.
Result<void> bringMeasures(OpenedBook& opened, const std::string& house, const std::string& path,
    bool goodRows, Console& console);

} // namespace miterbook
