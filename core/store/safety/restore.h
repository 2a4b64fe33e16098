// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/clock.h"
#include "store/safety/backup_name.h"

namespace miterbook {

/// What stood there before, kept among the backups; none when there was no book.
struct Replaced {
    std::optional<Backup> former;
};

/// Puts a copy of a sound book in the place of `book`, which no program may have open; the present
/// one goes among its backups first, as it is if it is damaged. At every moment there is a whole
/// book. Errors: `source` is damaged or no book; Fault::conflict when the book is held; the disk.
Result<Replaced> replaceBook(
    const std::string& book, const std::string& source, const Clock& clock);

} // namespace miterbook
