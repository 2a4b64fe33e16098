// SPDX-License-Identifier: GPL-3.0-or-later
#include "hours/week_entry.h"

#include "basics/number_text.h"

namespace miterbook {

namespace {

std::vector<TimeEntry> entriesBehind(
    const std::vector<TimeEntry>& entries, const WeekKey& key, Date day) {
    std::vector<TimeEntry> behind;
    for (const TimeEntry& entry : entries) {
        if (entry.date == day && keyOf(entry) == key)
            behind.push_back(entry);
    }
    return behind;
}

TimeEntry newEntry(const WeekKey& key, Date day, IdSource& ids) {
    TimeEntry entry;
    entry.id = ids.next<TimeEntry>();
    entry.date = day;
    entry.person = key.person;
    entry.house = key.house;
    entry.work = key.work;
    entry.task = key.task;
    entry.kind = key.kind;
    return entry;
}

} // namespace

Result<EntryChange> typeCell(const std::vector<TimeEntry>& entries, const WeekKey& key, Date day,
    Hours time, Quantity done, IdSource& ids) {
    EntryChange change;
    const std::vector<TimeEntry> behind = entriesBehind(entries, key, day);
    const bool nothing = time == Hours() && done == Quantity();
    if (nothing) {
        for (const TimeEntry& entry : behind)
            change.removed.push_back(entry.id);
        return change;
    }
    TimeEntry last = behind.empty() ? newEntry(key, day, ids) : behind.back();
    Hours before;
    Quantity doneBefore;
    for (std::size_t i = 0; i + 1 < behind.size(); ++i) {
        before += behind[i].time;
        doneBefore += behind[i].done;
    }
    if (time < before || done < doneBefore) {
        return badInput("There are " + std::to_string(behind.size()) + " entries on " + isoDate(day)
            + "; open them to take away more than the last one holds.");
    }
    const bool changes = behind.empty() || last.time != time - before
        || last.done != done - doneBefore;
    last.time = time - before;
    last.done = done - doneBefore;
    if (last.time == Hours() && last.done == Quantity())
        change.removed.push_back(last.id);
    else if (changes)
        change.put.push_back(last);
    return change;
}

} // namespace miterbook
