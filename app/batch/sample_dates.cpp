// SPDX-License-Identifier: GPL-3.0-or-later
#include "batch/sample_dates.h"

#include "batch/sample_house.h"
#include "job/house_stage.h"

#include <algorithm>

namespace miterbook {

namespace {

using Crew = std::vector<Id<CrewMember>>;

/// Writes dates into one edit.
class DateWriter {
public:
    explicit DateWriter(OpenedBook& opened)
        : m_opened(opened)
        , m_edit(opened.book(), "Enter dates of the houses") {}

    /// So many working days from the first one on or after `from`.
    void add(Id<House> house, HouseDateKind kind, Date from, int days, const Crew& crew,
        const char* note = "") {
        HouseDate date;
        date.id = m_opened.workbook.ids().next<HouseDate>();
        date.house = house;
        date.kind = kind;
        date.from = workingDay(from);
        for (Date last = date.from; --days > 0; date.to = last)
            last = workingDay(addDays(last, 1));
        date.crew = crew;
        date.note = note;
        m_edit.put(std::move(date));
    }
    Result<void> perform() { return m_opened.perform(m_edit.take()); }

private:
    static Date workingDay(Date day) {
        const unsigned name = std::chrono::weekday(std::chrono::sys_days(day)).c_encoding();
        return addDays(day, name == 6 ? 2 : name == 0 ? 1 : 0);
    }

    OpenedBook& m_opened;
    EditBuilder m_edit;
};

Date firstDay(const Book& book, Id<House> house, Date today) {
    Date first = today;
    for (const TimeEntry& entry : entriesOf(book, house))
        first = std::min(first, entry.date);
    return first;
}

/// At most two of those who count in the crew rate.
Crew twoOf(const Book& book) {
    Crew crew;
    for (const auto& [id, person] : book.prices.of<CrewMember>()) {
        if (person.active && crew.size() < 2)
            crew.push_back(id);
    }
    return crew;
}

} // namespace

Result<void> addSampleDates(OpenedBook& opened, const std::vector<Id<House>>& houses, Date today) {
    using enum HouseDateKind;
    const Book& book = opened.book();
    const Crew both = twoOf(book);
    const Crew one(both.begin(), both.begin() + std::min<std::ptrdiff_t>(1, std::ssize(both)));
    DateWriter dates(opened);
    Id<House> finishedLast;
    int underway = 0;
    for (const Id<House> house : houses) {
        if (isFinished(*book.house(house))) {
            finishedLast = house;
            continue;
        }
        const Date first = firstDay(book, house, today);
        const int later = 9 * underway++;
        dates.add(house, delivery, addDays(first, -2), 1, {}, "garage, forklift at the gate");
        dates.add(house, firstTrip, first, 3, both);
        dates.add(house, secondTrip, addDays(today, 4 + later), 3, both);
        dates.add(house, punch, addDays(today, 11 + later), 1, one);
    }
    if (finishedLast) // while the first house's second trip is on
        dates.add(finishedLast, other, addDays(today, 4), 1, one, "callback: a door that sticks");
    return dates.perform();
}

} // namespace miterbook
