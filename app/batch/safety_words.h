// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "store/safety/backups.h"

#include <string>

namespace miterbook {

/// "2026-11-26 01:30" of a UTC timestamp, in the machine's own time.
std::string localTime(const std::string& at);

/// "14 houses, 3 plans; last change 2026-11-26 01:30: Revise window W4".
std::string summaryWords(const BookSummary& summary);

/// Why a backup was made, in words for the user.
std::string reasonWords(BackupReason reason);

/// "2.4 MB".
std::string sizeWords(std::int64_t bytes);

} // namespace miterbook
