// SPDX-License-Identifier: GPL-3.0-or-later
#include "io/hours_reading.h"

#include "basics/amount_text.h"
#include "basics/number_text.h"
#include "basics/typed_date.h"
#include "hours/done_units.h"
#include "hours/entry_checks.h"
#include "io/csv_table.h"
#include "io/hours_words.h"

#include <algorithm>
#include <map>
#include <set>

namespace miterbook {

namespace {

using enum HoursColumn;

/// Which column of the file says what.
struct HoursTitles {
    std::map<HoursColumn, std::size_t> columns;
    std::vector<std::string> unmapped;

    explicit HoursTitles(const CsvRecord& titles) {
        for (std::size_t i = 0; i < titles.cells.size(); ++i) {
            const auto column = hoursColumnCalled(titles.cells[i]);
            if (column)
                columns.try_emplace(*column, i);
            else if (!titles.cells[i].empty())
                unmapped.push_back(titles.cells[i]);
        }
    }
    bool readable() const { return missing().empty(); }
    std::vector<std::string> missing() const {
        std::vector<std::string> names;
        for (const HoursColumn column : {date, who, what, hours}) {
            if (!columns.contains(column))
                names.emplace_back(word(column));
        }
        return names;
    }
};

/// Reads one record; what cannot be read is added to the rejections.
class HoursRow {
public:
    HoursRow(const CsvRecord& record, const CsvRecord& titles, const HoursTitles& map,
        std::vector<HoursRejection>& rejected)
        : m_record(record)
        , m_titles(titles)
        , m_map(map)
        , m_rejected(rejected) {}

    bool refused() const { return m_refused; }
    std::string_view text(HoursColumn column) const {
        const auto found = m_map.columns.find(column);
        return found == m_map.columns.end() ? std::string_view() : m_record.cell(found->second);
    }
    template <class T>
    T take(HoursColumn column, const Result<T>& value, T otherwise = {}) {
        if (value)
            return *value;
        refuse(column, value.error().sentence);
        return otherwise;
    }
    void refuse(HoursColumn column, const std::string& reason) {
        const auto found = m_map.columns.find(column);
        m_rejected.push_back({m_record.line,
            found == m_map.columns.end() ? std::string(word(column))
                                         : std::string(m_titles.cell(found->second)),
            reason});
        m_refused = true;
    }

private:
    const CsvRecord& m_record;
    const CsvRecord& m_titles;
    const HoursTitles& m_map;
    std::vector<HoursRejection>& m_rejected;
    bool m_refused = false;
};

void readWork(HoursRow& row, TimeEntry& entry) {
    const WrittenWork written = row.take(what, workCalled(row.text(what)));
    entry.work = written.work;
    entry.task = written.task;
    entry.kind = written.kind;
    if (!row.text(task).empty()) {
        entry.task = row.take(task, taskCalled(row.text(task)));
        if (!row.refused() && pieceOfWork(entry.task) != entry.work)
            row.refuse(task, "That task is no part of " + std::string(word(entry.work)) + ".");
    }
    if (!row.text(kind).empty())
        entry.kind = row.take(kind, kindCalled(row.text(kind)));
}

TimeEntry readEntry(HoursRow& row, const Book& book, Date today) {
    TimeEntry entry;
    entry.date = row.take(
        date, parseTypedDate(row.text(date), book.prices.shop().monthFirst, today));
    entry.person = row.take(who, personCalled(row.text(who), book.prices));
    entry.house = row.take(house, houseCalled(row.text(house), book));
    readWork(row, entry);
    entry.time = row.take(hours, parseHours(row.text(hours)));
    if (!row.text(done).empty())
        entry.done = amountCounted(row.take(done, parseQuantity(row.text(done))), doneUnit(entry),
            book.prices.shop().unit);
    entry.note = row.text(note);
    if (row.refused())
        return entry;
    if (const auto sound = checkEntry(entry, today); !sound)
        row.refuse(entry.date > today ? date : hours, sound.error().sentence);
    return entry;
}

/// Takes one like `entry` off the list; false when there is none.
bool takeTwin(std::vector<TimeEntry>& list, TimeEntry entry) {
    const auto twin = std::ranges::find_if(list, [&](const TimeEntry& each) {
        entry.id = each.id;
        return each == entry;
    });
    if (twin == list.end())
        return false;
    list.erase(twin);
    return true;
}

Error noColumns(const HoursTitles& titles) {
    std::string names;
    for (const std::string& name : titles.missing())
        names += (names.empty() ? "" : ", ") + name;
    return badInput("The file has no column for " + names + ".");
}

} // namespace

int HoursReading::rejectedRows() const {
    std::set<int> lines;
    for (const HoursRejection& rejection : rejected)
        lines.insert(rejection.line);
    return static_cast<int>(lines.size());
}

std::string HoursReading::sentence(const HoursRejection& rejection) {
    return "line " + std::to_string(rejection.line) + ", " + rejection.column + ": "
        + rejection.reason;
}

Result<HoursReading> readHours(
    std::string_view bytes, const Book& book, const std::vector<TimeEntry>& entries, Date today) {
    const auto table = readCsv(bytes);
    if (!table)
        return table.error();
    const CsvRecord& titles = table->records.front();
    const HoursTitles map(titles);
    if (!map.readable())
        return noColumns(map);
    HoursReading reading;
    reading.unmapped = map.unmapped;
    std::vector<TimeEntry> there = entries;
    for (std::size_t i = 1; i < table->records.size(); ++i) {
        HoursRow row(table->records[i], titles, map, reading.rejected);
        const TimeEntry entry = readEntry(row, book, today);
        if (row.refused())
            continue;
        (takeTwin(there, entry) ? reading.known : reading.rows).push_back(entry);
    }
    return reading;
}

} // namespace miterbook
