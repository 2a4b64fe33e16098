// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/edit.h"
#include "store/connection.h"

#include <string>
#include <vector>

namespace miterbook {

/// One edit as it was made.
struct JournalEntry {
    std::int64_t seq = 0; ///< 1, 2, ... without gaps
    std::string at;       ///< UTC, ISO 8601
    Edit edit;

    bool operator==(const JournalEntry&) const = default;
};

/// Adds an edit at the end of the journal.
Result<void> appendToJournal(Connection& connection, const std::string& at, const Edit& edit);

/// The entries after `seq` (0: all), oldest first.
Result<std::vector<JournalEntry>> journalAfter(Connection& connection, std::int64_t seq);

} // namespace miterbook
