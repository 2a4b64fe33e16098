// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/result.h"
#include "hours/week.h"

#include <cstdint>
#include <string>

namespace miterbook {

/// A moment, in whole seconds since 1970-01-01T00:00:00Z.
using Moment = std::int64_t;

/// Reads `2026-11-25T06:07:46Z`, as Clock::timestamp() writes it. Error: a sentence.
Result<Moment> parseMoment(std::string_view timestamp);

/// A timer at work. It is a row of the book, so that it goes on running through a crash or with the
/// machine switched off: what it has run follows from when it was started.
struct Timer {
    Id<Timer> id;
    Id<CrewMember> person;
    Id<House> house;
    PieceOfWork work = PieceOfWork::doors;
    Task task = Task::other;
    TimeKind kind = TimeKind::work;
    Date day = noDate;        ///< on which it was first started: the day its time is written to
    std::string started;      ///< timestamp of the last start; empty: it stands still
    std::int64_t seconds = 0; ///< run before that start

    bool running() const { return !started.empty(); }
    bool operator==(const Timer&) const = default;
};

template <>
struct Describe<Timer> {
    static constexpr std::string_view table = "timer";
    static constexpr std::string_view noun = "timer";
    static constexpr void allFields(auto&& take) {
        take(field("id", &Timer::id), field("person", &Timer::person),
            field("house", &Timer::house), field("work", &Timer::work), field("task", &Timer::task),
            field("kind", &Timer::kind), field("day", &Timer::day),
            field("started", &Timer::started), field("seconds", &Timer::seconds));
    }
};

/// What the timer has run by `now`, in seconds; a clock that was set back counts as no time.
Result<std::int64_t> secondsRun(const Timer& timer, std::string_view now);

/// Starts it on, or sets it still; as it is when it already runs or stands.
Result<Timer> resumed(Timer timer, std::string_view now);
Result<Timer> paused(Timer timer, std::string_view now);

/// The entry of a timer that is done, to the nearest minute and at least one. Error with a sentence
/// when it has run longer than a day's work can be (16 hours): somebody forgot it, and has to say
/// how long it was.
Result<TimeEntry> timedEntry(const Timer& timer, std::string_view now, Id<TimeEntry> id);

} // namespace miterbook
