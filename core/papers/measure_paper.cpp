// SPDX-License-Identifier: GPL-3.0-or-later
#include "papers/cells.h"
#include "papers/cut_words.h"
#include "papers/heading.h"
#include "papers/plain_text.h"

namespace miterbook {

namespace {

/// What was not read is left open to be filled in by hand.
Cell readingCell(Length length, LengthStyle style) {
    return length == Length() ? Cell() : lengthCell(length, style);
}

PaperTable measureTable(const std::string& title, LengthStyle style) {
    using enum PaperColumn::Align;
    PaperTable table;
    table.title = title;
    table.toFill = true;
    table.columns = {{"No.", right, 6}, {"Opening", left, 13}, {"Plan", left, 15},
        {"Width top", right, 11}, {"Width mid", right, 11}, {"Width bottom", right, 12},
        {"Height left", right, 11}, {"Height mid", right, 11}, {"Height right", right, 11},
        {"Diag. up", right, 11}, {"Diag. down", right, 11}, {"Jamb", right, 9}};
    if (style.unit == LengthUnit::millimetres)
        table.columns[2].title = "Plan, mm";
    return table;
}

PaperTable::Row measureRow(const OpeningUnit& unit, LengthStyle style) {
    const Measure& m = unit.measure;
    const Opening& opening = unit.opening;
    PaperTable::Row row;
    row.cells = {countCell(unit.number), Cell::of(oneLine(unit.name)),
        Cell::of(formatLength(opening.width, style) + " x " + formatLength(opening.height, style))};
    for (const Length reading : {m.widthTop, m.widthMiddle, m.widthBottom, m.heightLeft,
             m.heightMiddle, m.heightRight, m.diagonalUp, m.diagonalDown, m.proud})
        row.cells.push_back(readingCell(reading, style));
    return row;
}

/// What the readings so far tell, and notes.
std::vector<std::string> remarksOf(
    const std::vector<const OpeningUnit*>& units, const PaperJob& job, const JobFigures& figures) {
    std::vector<std::string> lines;
    const PriceBook& prices = job.book.prices;
    for (const OpeningUnit* unit : units) {
        const Plan& plan = figures.whole.plan;
        const Id<Profile> casing = unit->opening.casing ? unit->opening.casing
            : unit->opening.isWindow()                  ? plan.windowCasing
                                                        : plan.doorCasing;
        const Profile* profile = prices.profile(casing);
        for (const MeasureRemark& remark : remarksOn(unit->measure, unit->opening, job.book.bench(),
                 profile ? profile->width : Length(), prices.shop().lengths()))
            lines.push_back(oneLine(unit->name) + ": " + remark.sentence);
        if (const std::string note = oneLine(unit->measure.note); !note.empty())
            lines.push_back(oneLine(unit->name) + ": " + note);
    }
    return lines;
}

} // namespace

Paper measurePaper(const PaperJob& job, const JobFigures& figures) {
    Paper paper = beginPaper("measure", "Measure sheet", job);
    addSawFacts(paper, job, figures);
    const LengthStyle style = job.book.prices.shop().lengths();
    const CutFigures cut = cutFiguresFor(job.book, figures);
    std::vector<const OpeningUnit*> shown;
    int measured = 0;
    for (const OpeningUnit& unit : cut.units) {
        if (job.level && unit.opening.level != job.level)
            continue;
        if (shown.empty() || shown.back()->opening.level != unit.opening.level) {
            const Level* level = figures.whole.level(unit.opening.level);
            paper.blocks.emplace_back(
                measureTable(level ? level->name : std::string("No level"), style));
        }
        shown.push_back(&unit);
        measured += unit.isMeasured() ? 1 : 0;
        std::get<PaperTable>(paper.blocks.back()).rows.push_back(measureRow(unit, style));
    }
    if (shown.empty())
        paper.blocks.emplace_back(Paragraph{Paragraph::Style::body, {"No opening to measure."}});
    paper.blocks.emplace_back(Paragraph{Paragraph::Style::body,
        {"Inside the jamb; heights of doors from the finished floor. Diagonals from the lower left "
         "up, and from the upper left down. Jamb: + proud of the wall, - shy of it."}});
    addSection(paper, "Look at", Paragraph::Style::list, remarksOf(shown, job, figures));
    paper.totals.emplace_back("openings", countCell(static_cast<int>(shown.size())));
    paper.totals.emplace_back("measured", countCell(measured));
    return paper;
}

} // namespace miterbook
