// SPDX-License-Identifier: GPL-3.0-or-later
#include "io/hours_edit.h"

#include <algorithm>

namespace miterbook {

Result<HoursReading> readHoursAgainst(
    std::string_view bytes, const Book& book, Date today, const OpenDays& open) {
    auto alone = readHours(bytes, book, {}, today);
    if (!alone || alone->rows.empty())
        return alone;
    const auto [first, last] = std::ranges::minmax(alone->rows, {}, &TimeEntry::date);
    if (auto opened = open(first.date, last.date); !opened)
        return opened.error();
    std::vector<TimeEntry> there;
    for (const auto& [id, entry] : book.time.read()) {
        if (first.date <= entry.date && entry.date <= last.date)
            there.push_back(entry);
    }
    return readHours(bytes, book, there, today);
}

Edit hoursEdit(
    const Book& book, IdSource& ids, const HoursReading& reading, const std::string& file) {
    EditBuilder edit(
        book, "Bring in " + std::to_string(reading.rows.size()) + " entries of hours from " + file);
    for (TimeEntry entry : reading.rows) {
        entry.id = ids.next<TimeEntry>();
        edit.put(std::move(entry));
    }
    return edit.take();
}

} // namespace miterbook
