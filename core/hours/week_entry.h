// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "hours/week.h"

namespace miterbook {

/// What typing into a cell of the week grid does to the entries behind it.
struct EntryChange {
    std::vector<TimeEntry> put;
    std::vector<Id<TimeEntry>> removed;

    bool empty() const { return put.empty() && removed.empty(); }
    bool operator==(const EntryChange&) const = default;
};

/// Makes the entries of a line and day add up to `time` and `done`. An empty cell gets one entry, a
/// cell of one entry has it changed (or removed at no time and nothing done); of several, the last
/// takes the difference, so that what was noted before stays. Error: a sentence when the difference
/// is more than the last one holds.
Result<EntryChange> typeCell(const std::vector<TimeEntry>& entries, const WeekKey& key, Date day,
    Hours time, Quantity done, IdSource& ids);

} // namespace miterbook
