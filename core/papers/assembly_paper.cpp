// SPDX-License-Identifier: GPL-3.0-or-later
#include "cut/assembly_sets.h"
#include "papers/cells.h"
#include "papers/cut_words.h"
#include "papers/heading.h"
#include "papers/plain_text.h"

#include <cmath>

namespace miterbook {

namespace {

std::string minutesText(double minutes) {
    const long whole = std::lround(minutes);
    if (whole < 60)
        return std::to_string(whole) + " min";
    const long rest = whole % 60;
    return std::to_string(whole / 60) + " h" + (rest == 0 ? "" : " " + std::to_string(rest));
}

std::string jointText(const AssemblySet& set) {
    if (set.fasteners == 0)
        return "adhesive alone";
    return set.fasteners == 1 ? "1 biscuit" : "2 biscuits";
}

std::string tenthsText(double value) {
    const long tenths = std::lround(value * 10);
    return std::to_string(tenths / 10) + "." + std::to_string(tenths % 10);
}

std::string mark(const AssemblySet& set) {
    return set.state == PieceState::assembled ? "X" : "☐";
}

PaperTable benchTable(const AssemblyPlan& plan, const PriceBook& prices, LengthStyle style) {
    using enum PaperColumn::Align;
    PaperTable table;
    table.title = "At the bench, in the order in which the saw completes them";
    table.columns = {{"Set", left, 24}, {"Corners", right, 11}, {"Joint", left, 18},
        {"Casing", left, 22}, {lengthTitle("Longest", style), right, 14},
        {"Off the bench", right, 14}, {"Made", centre, 8}};
    for (const AssemblySet& set : plan.bench) {
        const std::string off = set.state == PieceState::assembled ? "made"
                                                                   : minutesText(set.times.off);
        table.rows.push_back({PaperTable::Kind::plain,
            {Cell::of(oneLine(set.name)), countCell(set.corners), Cell::of(jointText(set)),
                Cell::of(oneLine(prices.profileName(set.profile))), lengthCell(set.longest, style),
                Cell::of(off), Cell::of(mark(set))}});
    }
    return table;
}

PaperTable floorTable(const AssemblyPlan& plan, LengthStyle style) {
    using enum PaperColumn::Align;
    PaperTable table;
    table.title = "On the floor by the opening";
    table.columns = {{"Set", left, 30}, {"Corners", right, 11}, {"Joint", left, 30},
        {lengthTitle("Longest", style), right, 16}, {"Made", centre, 8}};
    for (const AssemblySet& set : plan.floor)
        table.rows.push_back({PaperTable::Kind::plain,
            {Cell::of(oneLine(set.name)), countCell(set.corners), Cell::of(jointText(set)),
                lengthCell(set.longest, style), Cell::of(mark(set))}});
    return table;
}

std::vector<std::string> paceOf(const AssemblyPlan& plan) {
    std::vector<std::string> lines{plan.joining + ": " + std::to_string(plan.work.clamps)
        + " clamps, " + minutesText(plan.work.dwell) + " in the clamp, "
        + tenthsText(plan.work.makeUp) + " min to make up a corner."};
    lines.push_back("The first set comes off after " + minutesText(plan.firstOff) + "; then "
        + tenthsText(plan.setsPerHour) + " sets of " + std::to_string(plan.usualCorners)
        + " corners an hour.");
    lines.push_back(plan.work.clamps >= plan.clampsNeeded
            ? "No clamp is waited for (" + std::to_string(plan.clampsNeeded) + " are enough)."
            : "The bench waits for clamps; " + std::to_string(plan.clampsNeeded)
                + " would never keep it waiting.");
    return lines;
}

} // namespace

Paper assemblyPaper(const PaperJob& job, const JobFigures& figures) {
    const SawSheet sheet = cutFiguresFor(job.book, figures).sheet;
    const PriceBook& prices = job.book.prices;
    const LengthStyle style = sawStyle(prices.shop());
    const AssemblyPlan plan = assemblyPlan(sheet, job.level, job.book.bench(), prices);
    Paper paper = beginPaper("assembly", "Assembly sheet", job);
    paper.type = Paper::Type::wall;
    addSawFacts(paper, job, figures);
    paper.blocks.emplace_back(benchCaution());
    if (!plan.bench.empty()) {
        paper.blocks.emplace_back(Paragraph{Paragraph::Style::body, paceOf(plan)});
        paper.blocks.emplace_back(benchTable(plan, prices, style));
    }
    if (!plan.floor.empty())
        paper.blocks.emplace_back(floorTable(plan, style));
    if (plan.bench.empty() && plan.floor.empty())
        paper.blocks.emplace_back(Paragraph{Paragraph::Style::body, {"No set to assemble."}});
    paper.totals.emplace_back("sets at the bench", countCell(static_cast<int>(plan.bench.size())));
    paper.totals.emplace_back("sets on the floor", countCell(static_cast<int>(plan.floor.size())));
    return paper;
}

} // namespace miterbook
