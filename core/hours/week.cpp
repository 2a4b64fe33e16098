// SPDX-License-Identifier: GPL-3.0-or-later
#include "hours/week.h"

#include <algorithm>
#include <map>

namespace miterbook {

namespace {

unsigned firstWeekday(WeekStart start) {
    switch (start) {
    case WeekStart::sunday:
        return 0;
    case WeekStart::monday:
        return 1;
    default:
        return 6;
    }
}

bool isOf(const WeekLine& line, Id<CrewMember> person) {
    return !person || line.key.person == person;
}

} // namespace

Date weekOf(Date day, WeekStart start) {
    if (!day.ok())
        return noDate;
    const unsigned weekday = std::chrono::weekday(std::chrono::sys_days(day)).c_encoding();
    const unsigned past = (weekday + daysOfWeek - firstWeekday(start)) % daysOfWeek;
    return addDays(day, -static_cast<int>(past));
}

WeekKey keyOf(const TimeEntry& entry) {
    return {entry.person, entry.house, entry.work, entry.task, entry.kind};
}

Hours WeekLine::time() const {
    Hours sum;
    for (const WeekCell& cell : days)
        sum += cell.time;
    return sum;
}

Quantity WeekLine::done() const {
    Quantity sum;
    for (const WeekCell& cell : days)
        sum += cell.done;
    return sum;
}

Hours Week::dayTotal(std::size_t index, Id<CrewMember> person) const {
    Hours sum;
    for (const WeekLine& line : lines) {
        if (isOf(line, person))
            sum += line.days.at(index).time;
    }
    return sum;
}

Hours Week::total(Id<CrewMember> person) const {
    Hours sum;
    for (const WeekLine& line : lines) {
        if (isOf(line, person))
            sum += line.time();
    }
    return sum;
}

std::vector<Id<CrewMember>> Week::people() const {
    std::vector<Id<CrewMember>> list;
    for (const WeekLine& line : lines) {
        if (list.empty() || list.back() != line.key.person)
            list.push_back(line.key.person);
    }
    return list;
}

Week weekGrid(const std::vector<TimeEntry>& entries, Date first) {
    Week week;
    week.first = first;
    if (!first.ok())
        return week;
    std::map<WeekKey, WeekLine> lines;
    for (const TimeEntry& entry : entries) {
        if (!entry.date.ok())
            continue;
        const auto day = (std::chrono::sys_days(entry.date) - std::chrono::sys_days(first)).count();
        if (day < 0 || day >= static_cast<int>(daysOfWeek))
            continue;
        WeekLine& line = lines[keyOf(entry)];
        line.key = keyOf(entry);
        WeekCell& cell = line.days.at(static_cast<std::size_t>(day));
        cell.time += entry.time;
        cell.done += entry.done;
        ++cell.entries;
    }
    for (auto& [key, line] : lines)
        week.lines.push_back(std::move(line));
    return week;
}

std::vector<WeekKey> linesToRepeat(const Week& last, const Week& week) {
    std::vector<WeekKey> keys;
    for (const WeekLine& line : last.lines) {
        if (std::ranges::find(week.lines, line.key, &WeekLine::key) == week.lines.end())
            keys.push_back(line.key);
    }
    return keys;
}

} // namespace miterbook
