// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/edit.h"
#include "store/connection.h"

#include <map>
#include <string>
#include <vector>

namespace miterbook {

/// A row as the journal has it last; nothing when it was removed.
struct LastState {
    std::int64_t seq = 0;
    std::optional<AnyRow> row;
};

/// The rows as the journal has them at its end: what the tables must hold, told a second time.
struct JournalStates {
    std::map<std::pair<std::string, std::int64_t>, LastState> rows; ///< by table and id
    std::int64_t last = 0;                                          ///< number of the last entry
    std::int64_t entries = 0;                                       ///< that could be read
    std::vector<std::int64_t> unreadable; ///< that are there and could not

    /// Whether every entry from 1 to the last is there and can be read.
    bool whole() const { return unreadable.empty() && entries == last; }
};

/// Walks through the journal as far as it can be read. Errors: there is no journal.
Result<JournalStates> journalStates(Connection& connection);

} // namespace miterbook
