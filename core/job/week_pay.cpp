// SPDX-License-Identifier: GPL-3.0-or-later
#include "job/week_pay.h"

#include <algorithm>

namespace miterbook {

namespace {

template <class Row>
std::vector<Row> listOf(const Table<Row>& table) {
    std::vector<Row> list;
    for (const auto& [id, row] : table)
        list.push_back(row);
    return list;
}

} // namespace

std::vector<TimeEntry> weekEntries(const Book& book, Date first) {
    const Date last = addDays(first, static_cast<int>(daysOfWeek) - 1);
    std::vector<TimeEntry> entries;
    for (const auto& [id, entry] : book.time.read()) {
        if (first <= entry.date && entry.date <= last)
            entries.push_back(entry);
    }
    std::ranges::stable_sort(entries, {}, &TimeEntry::date);
    return entries;
}

PaySheet weekPay(const Book& book, Date first) {
    const PayRules rules{listOf(book.prices.of<CrewMember>()), listOf(book.jobs.of<CrewPay>()),
        listOf(book.jobs.of<PieceRate>()), book.payTerms()};
    return paySheet(weekEntries(book, first), first, rules);
}

} // namespace miterbook
