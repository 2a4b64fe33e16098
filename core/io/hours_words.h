// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/result.h"
#include "hours/time_entry.h"
#include "job/book.h"

#include <optional>
#include <string_view>

namespace miterbook {

/// What a column of an hours file says.
enum class HoursColumn { date, who, house, what, task, kind, hours, done, note };

template <>
struct Words<HoursColumn> {
    using enum HoursColumn;
    static constexpr std::array list{
        Word{date, "date"},
        Word{who, "who"},
        Word{house, "house"},
        Word{what, "what"},
        Word{task, "task"},
        Word{kind, "kind"},
        Word{hours, "hours"},
        Word{done, "done"},
        Word{note, "note"},
    };
};

/// The column of a title ("Person", "Piece of work", "Units done"); nothing for one that is not
/// known.
std::optional<HoursColumn> hoursColumnCalled(std::string_view title);

/// What somebody did, as he wrote it down.
struct WrittenWork {
    PieceOfWork work = PieceOfWork::doors;
    Task task = Task::other;
    TimeKind kind = TimeKind::work;

    bool operator==(const WrittenWork&) const = default;
};

// The meaning of a cell. Errors: one sentence with the cell in quotes.

/// A piece of work ("doors", "door", "baseboard"), a task ("pocket door") or a kind of time
/// ("travel", "driving", "waiting").
Result<WrittenWork> workCalled(std::string_view text);
Result<Task> taskCalled(std::string_view text);
Result<TimeKind> kindCalled(std::string_view text);
/// Somebody of the crew by whole name, or by first name where only one has it.
Result<Id<CrewMember>> personCalled(std::string_view text, const PriceBook& prices);
/// A house by name or lot ("Lot 12", "12"), one that is underway before others. Empty text and
/// "shop" are the shop's own time.
Result<Id<House>> houseCalled(std::string_view text, const Book& book);

} // namespace miterbook
