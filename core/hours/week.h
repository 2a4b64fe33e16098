// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/result.h"
#include "hours/time_entry.h"

#include <array>
#include <compare>
#include <optional>
#include <vector>

namespace miterbook {

inline constexpr std::size_t daysOfWeek = 7;

/// The day on which the shop's week begins.
enum class WeekStart { sunday, monday, saturday };

template <>
struct Words<WeekStart> {
    static constexpr std::array list{
        Word{WeekStart::sunday, "Sunday"},
        Word{WeekStart::monday, "Monday"},
        Word{WeekStart::saturday, "Saturday"},
    };
};

/// The first day of the week that a day is in; no date for no date.
Date weekOf(Date day, WeekStart start);

/// What a line of the week grid stands for.
struct WeekKey {
    Id<CrewMember> person;
    Id<House> house;
    PieceOfWork work = PieceOfWork::doors;
    Task task = Task::other;
    TimeKind kind = TimeKind::work;

    auto operator<=>(const WeekKey&) const = default;
};

WeekKey keyOf(const TimeEntry& entry);

/// One day of a line: the sum of its entries.
struct WeekCell {
    Hours time;
    Quantity done;
    int entries = 0;

    bool operator==(const WeekCell&) const = default;
};

struct WeekLine {
    WeekKey key;
    std::array<WeekCell, daysOfWeek> days;

    Hours time() const;
    Quantity done() const;
    bool operator==(const WeekLine&) const = default;
};

/// A week of the crew's time, people by days.
struct Week {
    Date first = noDate;
    std::vector<WeekLine> lines; ///< by person, house, piece of work, task, kind

    Date day(std::size_t index) const { return addDays(first, static_cast<int>(index)); }
    /// Of everybody, or of one person.
    Hours dayTotal(std::size_t index, Id<CrewMember> person = {}) const;
    Hours total(Id<CrewMember> person = {}) const;
    /// Everybody with a line, once.
    std::vector<Id<CrewMember>> people() const;

    bool operator==(const Week&) const = default;
};

/// Gathers the entries of the seven days from `first`; others are left out.
Week weekGrid(const std::vector<TimeEntry>& entries, Date first);

/// Last week's lines without hours, to be filled in: those of `last` that are not in `week` yet.
std::vector<WeekKey> linesToRepeat(const Week& last, const Week& week);

} // namespace miterbook
