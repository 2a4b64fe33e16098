// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/date.h"
#include "basics/fields.h"
#include "basics/hours.h"
#include "basics/id.h"
#include "basics/quantity.h"
#include "book/crew.h"
#include "book/task.h"

#include <string>

namespace miterbook {

struct House;

/// What the time went into. Only `work` says anything about how long a task takes.
enum class TimeKind { work, travel, waiting, punch, callback };

template <>
struct Words<TimeKind> {
    static constexpr std::array list{
        Word{TimeKind::work, "work"},
        Word{TimeKind::travel, "travel"},
        Word{TimeKind::waiting, "waiting"},
        Word{TimeKind::punch, "punch"},
        Word{TimeKind::callback, "callback"},
    };
};

/// The time of one person on one day at one piece of work of a house.
struct TimeEntry {
    Id<TimeEntry> id;
    Date date = noDate;
    Id<CrewMember> person;
    Id<House> house; ///< none: the shop's own time
    PieceOfWork work = PieceOfWork::doors;
    Task task = Task::other; ///< which task of it, where that is said; other: not said
    TimeKind kind = TimeKind::work;
    Hours time;
    Quantity done; ///< finished meanwhile, in doneUnit(entry); 0: not said
    std::string note;

    bool operator==(const TimeEntry&) const = default;
};

template <>
struct Describe<TimeEntry> {
    static constexpr std::string_view table = "time_entry";
    static constexpr std::string_view noun = "time entry";
    static constexpr void allFields(auto&& take) {
        take(field("id", &TimeEntry::id), field("date", &TimeEntry::date),
            field("person", &TimeEntry::person), field("house", &TimeEntry::house),
            field("work", &TimeEntry::work), field("task", &TimeEntry::task),
            field("kind", &TimeEntry::kind), field("time", &TimeEntry::time),
            field("done", &TimeEntry::done), field("note", &TimeEntry::note));
    }
};

} // namespace miterbook
