// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "hours/time_entry.h"

namespace miterbook {

inline constexpr Id<CrewMember> lena{1};
inline constexpr Id<CrewMember> omar{2};
inline constexpr Id<House> lot12{31};
inline constexpr Id<House> lot14{32};

/// A day of the week that begins on Monday 2026-03-02: 0 is that Monday.
inline Date weekday(int day) {
    using namespace std::chrono;
    return addDays(Date{year(2026), March, std::chrono::day(2)}, day);
}

inline TimeEntry timeAt(int day, Id<CrewMember> person, PieceOfWork work, Hours time,
    Quantity done = {}, TimeKind kind = TimeKind::work) {
    static std::int64_t lastId = 100;
    TimeEntry entry;
    entry.id = Id<TimeEntry>(++lastId);
    entry.date = weekday(day);
    entry.person = person;
    entry.house = lot12;
    entry.work = work;
    entry.kind = kind;
    entry.time = time;
    entry.done = done;
    return entry;
}

} // namespace miterbook
