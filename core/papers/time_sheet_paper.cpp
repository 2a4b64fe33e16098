// SPDX-License-Identifier: GPL-3.0-or-later
#include "basics/amount_text.h"
#include "book/said_words.h"
#include "hours/done_units.h"
#include "job/week_pay.h"
#include "papers/cells.h"
#include "papers/heading.h"
#include "papers/plain_text.h"
#include "papers/week_papers.h"

#include <algorithm>

namespace miterbook {

namespace {

/// Nothing for no hours: an empty square of the grid.
Cell dayCell(const WeekCell& cell) {
    return cell.time == Hours() && cell.done == Quantity() ? Cell() : hoursCell(cell.time);
}

std::string whatOf(const WeekKey& key, LengthUnit written) {
    if (key.kind != TimeKind::work)
        return std::string(word(key.kind));
    return std::string(key.task == Task::other ? word(key.work) : said(key.task, written));
}

std::string houseOf(const WeekKey& key, const Book& book) {
    const House* house = book.house(key.house);
    return house ? oneLine(house->name) : "shop";
}

std::string personOf(Id<CrewMember> id, const Book& book) {
    const CrewMember* person = book.prices.of<CrewMember>().find(id);
    return person ? oneLine(person->name) : "somebody";
}

std::vector<PaperColumn> gridColumns(Date first) {
    using enum PaperColumn::Align;
    static constexpr std::array names{"Sun", "Mon", "Tue", "Wed", "Thu", "Fri", "Sat"};
    std::vector<PaperColumn> columns{{"House", left, 20, true}, {"What", left, 20}};
    for (int i = 0; i < static_cast<int>(daysOfWeek); ++i) {
        const Date day = addDays(first, i);
        const std::chrono::weekday name{std::chrono::sys_days(day)};
        columns.push_back({std::string(names[name.c_encoding()]) + " "
                + std::to_string(static_cast<unsigned>(day.day())),
            right, 9});
    }
    columns.push_back({"Hours", right, 10});
    columns.push_back({"Finished", right, 14});
    return columns;
}

PaperTable::Row lineRow(const WeekLine& line, const Book& book) {
    PaperTable::Row row;
    row.cells = {
        Cell::of(houseOf(line.key, book)), Cell::of(whatOf(line.key, book.prices.shop().unit))};
    for (const WeekCell& cell : line.days)
        row.cells.push_back(dayCell(cell));
    row.cells.push_back(hoursCell(line.time()));
    Cell done;
    if (line.done() != Quantity()) {
        const Unit unit = doneUnit(line.key.work, line.key.task);
        const LengthUnit written = book.prices.shop().unit;
        done = quantityCell(amountSaid(line.done(), unit, written));
        done.text.append(" ").append(unitText(unit, written));
    }
    row.cells.push_back(done);
    return row;
}

PaperTable::Row personTotal(const Week& week, Id<CrewMember> person) {
    PaperTable::Row row{PaperTable::Kind::total, {Cell::of("Total"), Cell()}};
    for (std::size_t day = 0; day < daysOfWeek; ++day)
        row.cells.push_back(hoursCell(week.dayTotal(day, person)));
    row.cells.push_back(hoursCell(week.total(person)));
    row.cells.emplace_back();
    return row;
}

PaperTable grid(const Week& week, const Book& book) {
    PaperTable table;
    table.columns = gridColumns(week.first);
    for (const Id<CrewMember> person : week.people()) {
        table.rows.push_back({PaperTable::Kind::group, {Cell::of(personOf(person, book))}});
        for (const WeekLine& line : week.lines) {
            if (line.key.person == person)
                table.rows.push_back(lineRow(line, book));
        }
        table.rows.push_back(personTotal(week, person));
    }
    return table;
}

std::vector<std::string> notesOf(const std::vector<TimeEntry>& entries, const PaperJob& job) {
    std::vector<std::string> notes;
    for (const TimeEntry& entry : entries) {
        if (entry.note.empty())
            continue;
        notes.push_back(formatDate(entry.date, job.book.prices.shop().monthFirst) + ", "
            + personOf(entry.person, job.book) + ", " + houseOf(keyOf(entry), job.book) + ": "
            + oneLine(entry.note));
    }
    return notes;
}

} // namespace

Date paperWeek(const PaperJob& job) {
    return weekOf(job.date, job.book.payTerms().weekStart);
}

void addWeek(Paper& paper, const PaperJob& job) {
    const bool monthFirst = job.book.prices.shop().monthFirst;
    const Date first = paperWeek(job);
    addFact(paper, "Week",
        formatDate(first, monthFirst) + " to " + formatDate(addDays(first, 6), monthFirst));
}

Paper timeSheetPaper(const PaperJob& job, const JobFigures&) {
    Paper paper = beginPaper("time-sheet", "Time sheet", shopWide(job));
    addWeek(paper, job);
    const auto entries = weekEntries(job.book, paperWeek(job));
    const Week week = weekGrid(entries, paperWeek(job));
    if (week.lines.empty()) {
        paper.blocks.emplace_back(
            Paragraph{Paragraph::Style::body, {"No hours are written for this week."}});
    } else {
        paper.blocks.emplace_back(grid(week, job.book));
        addSection(paper, "Notes", Paragraph::Style::list, notesOf(entries, job));
        paper.blocks.emplace_back(Signatures{{"Crew", "Approved by"}});
    }
    paper.totals.emplace_back("hours", hoursCell(week.total()));
    return paper;
}

} // namespace miterbook
