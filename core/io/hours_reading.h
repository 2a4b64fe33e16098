// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "hours/time_entry.h"
#include "job/book.h"

#include <string>
#include <string_view>
#include <vector>

namespace miterbook {

/// A cell of an hours file that keeps its row from being brought in, and why.
struct HoursRejection {
    int line = 0;
    std::string column; ///< its title in the file
    std::string reason; ///< one sentence

    bool operator==(const HoursRejection&) const = default;
};

/// What a file of hours says, before anything is brought in.
struct HoursReading {
    std::vector<TimeEntry> rows;  ///< without ids
    std::vector<TimeEntry> known; ///< rows that the book has already: the file was read before
    std::vector<HoursRejection> rejected; ///< by line; a row may have several
    std::vector<std::string> unmapped;    ///< titles of columns that mean nothing to us

    /// How many rows were turned away.
    int rejectedRows() const;
    /// "line 5, Who: there is no "Sam" in the crew."
    static std::string sentence(const HoursRejection& rejection);
};

/// Reads hours as CSV, such as a phone's notes: a row of titles with columns for date, who, house,
/// what and hours, and perhaps task, units done, kind and note. Dates as the shop writes them; who
/// by name or first name; house by name or lot; what by piece of work, task or kind of time
/// ("travel"). `entries` are those in the book, so that a file read twice brings nothing in twice.
/// Errors: no CSV, or no column for date, who, what or hours.
Result<HoursReading> readHours(
    std::string_view bytes, const Book& book, const std::vector<TimeEntry>& entries, Date today);

} // namespace miterbook
