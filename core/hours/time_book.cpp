// SPDX-License-Identifier: GPL-3.0-or-later
#include "hours/time_book.h"

#include <algorithm>

namespace miterbook {

TimeKey timeKeyOf(const TimeEntry& entry) {
    const bool counted = entry.kind == TimeKind::callback;
    return {entry.house, entry.work, entry.task, entry.kind, counted ? entry.date : noDate};
}

const std::vector<TimeSum>& TimeBook::of(Id<House> house) const {
    static const std::vector<TimeSum> none;
    const auto it = m_sums.find(house);
    return it == m_sums.end() ? none : it->second;
}

std::vector<TimeEntry> TimeBook::summedEntries(Id<House> house) const {
    std::vector<TimeEntry> entries;
    for (const TimeSum& sum : of(house)) {
        TimeEntry& entry = entries.emplace_back();
        entry.date = sum.key.day;
        entry.house = sum.key.house;
        entry.work = sum.key.work;
        entry.task = sum.key.task;
        entry.kind = sum.key.kind;
        entry.time = sum.time;
        entry.done = sum.done;
    }
    return entries;
}

Hours TimeBook::total(Id<House> house) const {
    Hours total;
    for (const TimeSum& sum : of(house))
        total += sum.time;
    return total;
}

void TimeBook::addSum(const TimeSum& sum) {
    add(sum.key, sum.time, sum.done, sum.entries);
}

void TimeBook::addRead(const Table<TimeEntry>& entries) {
    for (const auto& [id, entry] : entries)
        m_read.put(entry);
}

void TimeBook::change(const TimeEntry* before, const TimeEntry* after) {
    if (before)
        add(timeKeyOf(*before), Hours() - before->time, Quantity() - before->done, -1);
    if (after) {
        add(timeKeyOf(*after), after->time, after->done, 1);
        m_read.put(*after);
    } else if (before) {
        m_read.erase(before->id);
    }
}

void TimeBook::add(const TimeKey& key, Hours time, Quantity done, int entries) {
    std::vector<TimeSum>& sums = m_sums[key.house];
    auto it = std::ranges::lower_bound(sums, key, {}, &TimeSum::key);
    if (it == sums.end() || it->key != key)
        it = sums.insert(it, TimeSum{key, {}, {}, 0});
    it->time += time;
    it->done += done;
    it->entries += entries;
    if (it->entries == 0)
        sums.erase(it);
    if (sums.empty())
        m_sums.erase(key.house);
}

} // namespace miterbook
