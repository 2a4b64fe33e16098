// SPDX-License-Identifier: GPL-3.0-or-later
#include "io/schedule_reading.h"

#include "basics/digits.h"
#include "io/decoded_text.h"
#include "io/schedule_rows.h"
#include "plan/plan_checks.h"

#include <algorithm>
#include <map>

namespace miterbook {

namespace {

using enum ScheduleField;

/// The cells that hold something.
std::vector<std::size_t> filledCells(const CsvRecord& record) {
    std::vector<std::size_t> filled;
    for (std::size_t i = 0; i < record.cells.size(); ++i) {
        if (!record.cells[i].empty())
            filled.push_back(i);
    }
    return filled;
}

bool startsLikeNote(std::string_view text) {
    static constexpr std::array words{
        "total", "subtotal", "grand total", "notes", "note:", "note ", "end of"};
    const std::string folded = foldedText(text);
    return std::ranges::any_of(words, [&](const char* each) { return folded.starts_with(each); });
}

/// "W9", "104", "A": a mark though nothing else stands in its row.
bool looksLikeMark(std::string_view text) {
    const bool digit = std::ranges::any_of(text, isDigit);
    return text.find(' ') == std::string_view::npos && text.size() <= (digit ? 10U : 2U);
}

/// Reads the records of one schedule into a reading.
class Reader {
public:
    Reader(const Book& book, const ScheduleTarget& target, ScheduleReading& reading)
        : m_target(target)
        , m_reading(reading)
        , m_names(book, target.plan) {
        noteMarksOfPlan();
    }

    void read(const CsvTable& table) {
        const CsvRecord& header = table.records[m_reading.headers.record];
        for (std::size_t i = 0; i < table.records.size(); ++i) {
            const CsvRecord& record = table.records[i];
            if (i == m_reading.headers.record)
                continue;
            if (i < m_reading.headers.record || record.cells == header.cells || isNoRow(record))
                skip(record);
            else
                readRow(record);
        }
    }

private:
    bool isNoRow(const CsvRecord& record) const {
        const auto filled = filledCells(record);
        if (startsLikeNote(record.cells[filled.front()]))
            return true;
        if (filled.size() > 1 || m_reading.headers.headers.size() < 3)
            return false;
        const bool inMark = filled.front() == m_reading.headers.columnOf(mark);
        return !inMark || !looksLikeMark(record.cells[filled.front()]);
    }

    void skip(const CsvRecord& record) {
        const std::string& text = record.cells[filledCells(record).front()];
        m_reading.skipped.push_back({record.line, singleLine(text)});
        if (const Level* level = m_names.level(text))
            m_section = level->id;
    }

    void readRow(const CsvRecord& record) {
        const std::size_t remarks = m_reading.remarks.size();
        RowReader reader(record, m_reading, m_names);
        ScheduleRow row = m_reading.kind == ScheduleKind::windows ? windowRow(reader)
            : m_reading.kind == ScheduleKind::doors               ? doorRow(reader)
                                                                  : roomRow(reader);
        refuseTwin(reader, row);
        refuseAbsurd(reader, row);
        if (reader.rejected()) {
            m_reading.remarks.resize(remarks);
            return;
        }
        placeOnLevel(row);
        m_reading.rows.push_back(std::move(row));
    }

    /// The checks that a row typed by hand must pass too.
    static void refuseAbsurd(RowReader& reader, const ScheduleRow& row) {
        Result<void> checked;
        if (row.opening)
            checked = checkOpening(*row.opening);
        if (row.room)
            checked = checkRoom(*row.room);
        if (row.closet && checked)
            checked = checkCloset(*row.closet);
        if (!checked && !reader.rejected())
            reader.reject(reader.text(mark).empty() ? name : mark, checked.error().sentence);
    }

    /// Rows that name no level stand on that of the title above them, else on the target's.
    void placeOnLevel(ScheduleRow& row) const {
        const Id<Level> otherwise = m_section ? m_section : m_target.level;
        if (row.opening && !row.opening->level)
            row.opening->level = otherwise;
        if (row.room && !row.room->level)
            row.room->level = otherwise;
        if (row.closet)
            row.closet->level = row.room->level;
    }

    /// What a row is known by: the mark, or the name of a room without a number.
    static std::string keyOf(const Opening& opening) {
        return "opening " + foldedText(opening.mark);
    }
    static std::string keyOf(const Room& room) {
        return room.mark.empty() ? "name " + foldedText(room.name)
                                 : "room " + foldedText(room.mark);
    }

    void noteMarksOfPlan() {
        for (const auto& [id, opening] : m_names.rows().of<Opening>()) {
            if (!opening.variant && !opening.mark.empty())
                m_lineOf.try_emplace(keyOf(opening), 0);
        }
        for (const auto& [id, room] : m_names.rows().of<Room>()) {
            if (!room.variant)
                m_lineOf.try_emplace(keyOf(room), 0);
        }
    }

    void refuseTwin(RowReader& reader, const ScheduleRow& row) {
        const std::string key = row.opening ? keyOf(*row.opening) : keyOf(*row.room);
        if (key.ends_with(' '))
            return; // without a mark it has been refused already
        const auto [it, isNew] = m_lineOf.try_emplace(key, reader.line());
        if (isNew)
            return;
        const ScheduleField field = reader.text(mark).empty() ? name : mark;
        const std::string what(word(field));
        reader.reject(field,
            it->second > 0
                ? "Line " + std::to_string(it->second) + " has this " + what + " already."
                : "The plan has " + std::string(row.opening ? "an opening" : "a room") + " of this "
                    + what + " already.");
    }

    const ScheduleTarget& m_target;
    ScheduleReading& m_reading;
    PlanNames m_names;
    Id<Level> m_section;
    std::map<std::string, int> m_lineOf; ///< 0: in the plan
};

} // namespace

int ScheduleReading::rejectedRows() const {
    int count = 0;
    int line = 0;
    for (const Rejection& each : rejected) {
        if (each.line != line)
            ++count;
        line = each.line;
    }
    return count;
}

std::string ScheduleReading::missingSentence() const {
    if (missing.empty())
        return {};
    std::string sentence = "The schedule of " + std::string(word(kind)) + " has no column for ";
    for (std::size_t i = 0; i < missing.size(); ++i)
        sentence += (i == 0 ? "" : " and none for ") + missing[i];
    sentence += "; its columns are ";
    for (std::size_t i = 0; i < headers.headers.size(); ++i)
        sentence += (i == 0 ? "\"" : ", \"") + headers.headers[i].title + "\"";
    return sentence + ".";
}

std::string ScheduleReading::sentence(const Rejection& rejection) {
    return "line " + std::to_string(rejection.line) + ", " + rejection.column + ", \""
        + singleLine(rejection.text) + "\": " + rejection.reason;
}

Result<ScheduleReading> readSchedule(ScheduleKind kind, std::string_view bytes, const Book& book,
    const ScheduleTarget& target, const std::vector<HeaderChoice>& choices) {
    const auto table = readCsv(bytes);
    if (!table)
        return table.error();
    ScheduleReading reading;
    reading.kind = kind;
    reading.choices = choices;
    reading.headers = mapHeaders(kind, *table, book.prices.of<HeaderName>(), choices);
    reading.unmapped = reading.headers.unmapped();
    reading.missing = missingColumns(kind, reading.headers.fields());
    if (reading.missing.empty())
        Reader(book, target, reading).read(*table);
    return reading;
}

} // namespace miterbook
