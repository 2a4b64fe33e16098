// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "io/header_map.h"
#include "job/book.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace miterbook {

/// Where a schedule's rows go: an opened plan, and the level of rows that name none.
struct ScheduleTarget {
    Id<Plan> plan;
    Id<Level> level;
};

/// One good row: an opening, or a room and perhaps its closet. Ids are not given yet.
struct ScheduleRow {
    int line = 0;
    std::optional<Opening> opening;
    std::optional<Room> room;
    std::optional<Closet> closet;

    bool operator==(const ScheduleRow&) const = default;
};

/// A cell that keeps its row from being brought in, and why.
struct Rejection {
    int line = 0;
    std::string column; ///< its header in the file, or what the missing column would be called
    std::string text;   ///< what stands in the cell
    std::string reason; ///< one sentence

    bool operator==(const Rejection&) const = default;
};

/// A line that is no row: a title, a total, a note, a header again.
struct SkippedLine {
    int line = 0;
    std::string text;

    bool operator==(const SkippedLine&) const = default;
};

/// Everything there is to say about a schedule before anything is brought in.
struct ScheduleReading {
    ScheduleKind kind = ScheduleKind::windows;
    HeaderMap headers;
    std::vector<ScheduleRow> rows;
    std::vector<Rejection> rejected; ///< by line; a row may have several
    std::vector<SkippedLine> skipped;
    std::vector<std::string> unmapped; ///< headers that were not understood
    std::vector<std::string> missing;  ///< columns without which no row can be read
    std::vector<std::string> remarks;  ///< what was left unset in good rows, each with its line
    std::vector<std::string> missingLevels; ///< levels that rows name and the plan lacks
    std::vector<HeaderChoice> choices;      ///< the user's, to be remembered

    /// How many rows were turned away.
    int rejectedRows() const;
    /// "The schedule has no column for mark ..."; empty when nothing is missing.
    std::string missingSentence() const;
    /// "line 5, Width: "36 1/0" divides by zero."
    static std::string sentence(const Rejection& rejection);
};

/// Reads a schedule for an opened plan without changing anything. Bare numbers are inches, or what
/// the header says. Errors: the file cannot be read as CSV at all.
Result<ScheduleReading> readSchedule(ScheduleKind kind, std::string_view bytes, const Book& book,
    const ScheduleTarget& target, const std::vector<HeaderChoice>& choices = {});

} // namespace miterbook
