// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/result.h"
#include "hours/time_entry.h"

#include <string>
#include <vector>

namespace miterbook {

/// Whether one entry can stand in the book as it is: a date, a person, more than no and at most 24
/// hours, nothing negative. Error: one sentence.
Result<void> checkEntry(const TimeEntry& entry);
/// And a date that is not after `today`.
Result<void> checkEntry(const TimeEntry& entry, Date today);

/// What makes somebody look twice at entries that each can stand: more than 16 hours of one person
/// on a day, and the same thing twice. Sentences name the day; `nameOf` is asked for the person.
struct Doubt {
    Id<TimeEntry> entry; ///< the last that brought it about
    std::string sentence;

    bool operator==(const Doubt&) const = default;
};

using PersonNames = std::vector<std::pair<Id<CrewMember>, std::string>>;

std::vector<Doubt> doubtsAbout(const std::vector<TimeEntry>& entries, const PersonNames& names);

} // namespace miterbook
