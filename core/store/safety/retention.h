// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "store/safety/backup_name.h"

#include <vector>

namespace miterbook {

/// How many backups are kept.
struct Retention {
    int newest = 10; ///< the latest of all, whatever their age
    int days = 14;   ///< the last one of each of so many days that have one
    int weeks = 8;   ///< likewise
    int months = 24; ///< likewise; and the last one of every year
    std::int64_t bytes = std::int64_t(4) << 30; ///< beyond it the oldest go, but for the newest
};

/// The backups that may go, oldest first. Those before a newer format and as they were found
/// damaged count by their age like the others.
std::vector<Backup> toLetGo(std::vector<Backup> backups, const Retention& retention = {});

} // namespace miterbook
