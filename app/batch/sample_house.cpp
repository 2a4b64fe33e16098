// SPDX-License-Identifier: GPL-3.0-or-later
#include "batch/sample_house.h"

#include <algorithm>

namespace miterbook {

namespace {

/// Everything but punch and what nobody bids.
bool isPartOf(const TimeEntry& entry, PieceOfWork work) {
    const auto against = bidWorkOf(entry);
    return against && *against == work;
}

Hours hoursUntil(const SampleEntries& entries, PieceOfWork work, Date day) {
    Hours sum;
    for (const TimeEntry& entry : entries) {
        if (entry.date <= day && isPartOf(entry, work))
            sum += entry.time;
    }
    return sum;
}

Hours bidHours(const Book& book, const House& house, PieceOfWork work) {
    const auto bids = book.soldBid(house.work);
    const auto bid = std::ranges::find(bids, work, &WorkBid::work);
    return bid == bids.end() ? Hours() : bid->hours;
}

} // namespace

Date SampleHouse::dayAt(int percent) const {
    const auto days = (std::chrono::sys_days(last) - std::chrono::sys_days(first)).count();
    return addDays(first, static_cast<int>(days * percent / 100));
}

SampleEntries entriesOf(const Book& book, Id<House> house) {
    SampleEntries entries;
    for (const auto& [id, entry] : book.time.read()) {
        if (entry.house == house)
            entries.push_back(entry);
    }
    return entries;
}

Percent sampleDone(const Book& book, const SampleHouse& house, const SampleEntries& entries,
    PieceOfWork work, Date day) {
    constexpr std::int64_t step = 5;
    if (!house.underway && day > house.last)
        return Percent::hundred();
    const Hours all = house.underway ? bidHours(book, *book.house(house.id), work)
                                     : hoursUntil(entries, work, house.last);
    if (all <= Hours())
        return {};
    const std::int64_t share = hoursUntil(entries, work, day).minutes() * 100 / all.minutes();
    return Percent::whole(std::min<std::int64_t>(share, house.underway ? 95 : 100) / step * step);
}

} // namespace miterbook
