// SPDX-License-Identifier: GPL-3.0-or-later
#include "hours/timer.h"

#include "basics/digits.h"
#include "basics/number_text.h"
#include "basics/quote.h"

#include <algorithm>

namespace miterbook {

namespace {

constexpr Hours longestRun = Hours::whole(16);

/// Two digits of `text` from `at`; -1 where they are none.
int twoDigits(std::string_view text, std::size_t at) {
    if (!isDigit(text[at]) || !isDigit(text[at + 1]))
        return -1;
    return (text[at] - '0') * 10 + (text[at + 1] - '0');
}

} // namespace

Result<Moment> parseMoment(std::string_view timestamp) {
    const auto wrong = [&] { return badInput(inQuotes(timestamp) + " is not a time stamp."); };
    if (timestamp.size() != 20 || timestamp[10] != 'T' || timestamp[13] != ':'
        || timestamp[16] != ':' || timestamp[19] != 'Z')
        return wrong();
    const auto date = parseIsoDate(timestamp.substr(0, 10));
    const int hour = twoDigits(timestamp, 11);
    const int minute = twoDigits(timestamp, 14);
    const int second = twoDigits(timestamp, 17);
    const bool sound = hour >= 0 && hour < 24 && minute >= 0 && minute < 60 && second >= 0
        && second <= 60; // a leap second
    if (!date || !sound)
        return wrong();
    const std::int64_t days = std::chrono::sys_days(*date).time_since_epoch().count();
    return ((days * 24 + hour) * 60 + minute) * 60 + second;
}

Result<std::int64_t> secondsRun(const Timer& timer, std::string_view now) {
    if (!timer.running())
        return timer.seconds;
    const auto from = parseMoment(timer.started);
    if (!from)
        return from.error();
    const auto to = parseMoment(now);
    if (!to)
        return to.error();
    return timer.seconds + std::max<std::int64_t>(0, *to - *from);
}

Result<Timer> resumed(Timer timer, std::string_view now) {
    if (timer.running())
        return timer;
    const auto moment = parseMoment(now);
    if (!moment)
        return moment.error();
    timer.started = now;
    return timer;
}

Result<Timer> paused(Timer timer, std::string_view now) {
    const auto run = secondsRun(timer, now);
    if (!run)
        return run.error();
    timer.seconds = *run;
    timer.started.clear();
    return timer;
}

Result<TimeEntry> timedEntry(const Timer& timer, std::string_view now, Id<TimeEntry> id) {
    const auto run = secondsRun(timer, now);
    if (!run)
        return run.error();
    const Hours time = Hours::minutes(std::max<std::int64_t>(1, roundedQuotient(*run, 60)));
    if (time > longestRun) {
        return badInput("The timer of " + isoDate(timer.day) + " has run for " + formatHours(time)
            + " hours; say how long the work took.");
    }
    TimeEntry entry;
    entry.id = id;
    entry.date = timer.day;
    entry.person = timer.person;
    entry.house = timer.house;
    entry.work = timer.work;
    entry.task = timer.task;
    entry.kind = timer.kind;
    entry.time = time;
    return entry;
}

} // namespace miterbook
