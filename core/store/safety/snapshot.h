// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "store/safety/lineage.h"
#include "store/safety/restore.h"

namespace miterbook {

/// Writes the book as it is at this moment to a new file, whole and looked over: to be carried to
/// another machine. The book may be open meanwhile. Errors: the file is there already, the disk.
Result<void> writeSnapshot(const std::string& book, const std::string& snapshot);

/// Puts a snapshot that was worked on elsewhere in the place of the book, if it has everything that
/// the book has. Errors: nothing new in it; both have been changed since they parted; another book.
struct TakenIn {
    Lineage lineage;
    Replaced replaced;
};
Result<TakenIn> takeInSnapshot(
    const std::string& book, const std::string& snapshot, const Clock& clock);

} // namespace miterbook
