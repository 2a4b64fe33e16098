// SPDX-License-Identifier: GPL-3.0-or-later
#include "basics/amount_text.h"
#include "papers/cells.h"
#include "papers/cut_words.h"
#include "papers/heading.h"
#include "papers/plain_text.h"

#include <algorithm>
#include <map>

namespace miterbook {

namespace {

/// Builds the tables of one saw sheet, one for each level and profile.
class SawSheetTables {
public:
    SawSheetTables(const PaperJob& job, const JobFigures& figures, const CutFigures& cut)
        : m_job(job)
        , m_figures(figures)
        , m_cut(cut)
        , m_style(sawStyle(job.book.prices.shop())) {}

    std::vector<PaperTable> tables() const {
        std::vector<PaperTable> tables;
        const SheetStop* before = nullptr;
        for (const SheetStop* stop : stopsOn(m_cut.sheet, m_job.level)) {
            if (!before || before->level != stop->level || before->profile != stop->profile)
                tables.push_back(table(*stop));
            tables.back().rows.push_back(row(*stop));
            before = stop;
        }
        return tables;
    }

    /// What the sticks that the level takes up have left after their last cut here; sticks alike
    /// in one row.
    PaperTable sticks() const {
        using enum PaperColumn::Align;
        PaperTable table;
        table.title = "Sticks";
        table.columns = {{"Profile", left, 28, true}, {"Length", left, 16}, {"Sticks", left, 26},
            {"Stops", left, 16}, {lengthTitle("Then left", m_style), right, 18}};
        std::map<int, Use> uses;
        for (const SheetStop* stop : stopsOn(m_cut.sheet, m_job.level)) {
            for (const StickUse& use : stop->sticks) {
                Use& sum = uses[use.stick];
                sum.first = sum.first == 0 ? stop->number : sum.first;
                sum.last = stop->number;
                sum.left = use.left;
            }
        }
        std::vector<std::pair<Alike, std::vector<int>>> rows; // in order of their first stick
        for (const auto& [number, use] : uses) {
            const SheetStick* stick = m_cut.sheet.stick(number);
            if (!stick)
                continue;
            const Alike alike{stick->profile, stick->length, stick->fromRack, use};
            auto row = std::ranges::find(rows, alike, [](const auto& each) { return each.first; });
            if (row == rows.end())
                row = rows.insert(rows.end(), {alike, {}});
            row->second.push_back(number);
        }
        for (const auto& [alike, numbers] : rows)
            table.rows.push_back(stickRow(alike, numbers));
        return table;
    }

private:
    struct Use {
        int first = 0; ///< stop
        int last = 0;
        Length left;

        bool operator==(const Use&) const = default;
    };
    struct Alike {
        Id<Profile> profile;
        Length length;
        bool fromRack = false;
        Use use;

        bool operator==(const Alike&) const = default;
    };

    PaperTable::Row stickRow(const Alike& alike, const std::vector<int>& numbers) const {
        const std::string profile(m_job.book.prices.profileName(alike.profile));
        const Use& use = alike.use;
        std::string stops = std::to_string(use.first);
        if (use.last != use.first)
            stops += " to " + std::to_string(use.last);
        return {PaperTable::Kind::plain,
            {Cell::of(oneLine(profile)),
                Cell::of(stickText(alike.length, m_style.unit) + (alike.fromRack ? ", rack" : "")),
                Cell::of(numberRanges(numbers)), Cell::of(stops), lengthCell(use.left, m_style)}};
    }

    PaperTable table(const SheetStop& stop) const {
        using enum PaperColumn::Align;
        const PriceBook& prices = m_job.book.prices;
        const Level* level = m_figures.whole.level(stop.level);
        PaperTable table;
        table.title = oneLine(prices.profileName(stop.profile));
        if (level && !m_job.level)
            table.title += ", " + oneLine(level->name);
        table.columns = {{"No.", right, 7}, {lengthTitle("Set to", m_style), right, 18},
            {"Second stop", right, 14}, {"Pieces", right, 9}, {"Ends", left, 40}, {"For", left, 29},
            {"Sticks", left, 19}, {"Cut", centre, 7}};
        for (const std::size_t number : {0U, 1U, 2U, 3U})
            table.columns[number].strong = true;
        for (const std::size_t text : {5U, 6U})
            table.columns[text].below = true;
        return table;
    }

    PaperTable::Row row(const SheetStop& stop) const {
        const std::string angle = angleText(stop);
        const std::string ends = endsText(stop) + (angle.empty() ? "" : ", " + angle);
        const Cell offset = stop.offset > Length() ? lengthCell(stop.offset, m_style)
                                                   : Cell::of("");
        return {PaperTable::Kind::plain,
            {countCell(stop.number), lengthCell(stop.setting + m_cut.correction.add, m_style),
                offset, countCell(static_cast<int>(stop.pieces.size())), Cell::of(ends),
                Cell::of(servedText(m_cut.sheet, stop, m_style)), Cell::of(sticksText(stop)),
                Cell::of(stop.isDone() ? "X"
                        : stop.cut > 0 ? std::to_string(stop.cut)
                                       : "☐")}};
    }

    const PaperJob& m_job;
    const JobFigures& m_figures;
    const CutFigures& m_cut;
    LengthStyle m_style;
};

void addCorrection(Paper& paper, const SawCorrection& correction, LengthStyle style) {
    if (correction.cuts == 0)
        return;
    paper.blocks.emplace_back(Paragraph{Paragraph::Style::body,
        {"Every setting carries " + signedLength(correction.add, style) + " from "
            + std::to_string(correction.cuts) + (correction.cuts == 1 ? " test cut" : " test cuts")
            + ". Test again when tape or fence has been moved."}});
}

std::vector<std::string> warningsOf(const CutFigures& cut, const PaperJob& job, LengthStyle style) {
    std::vector<std::string> warnings;
    for (const SheetStop* stop : stopsOn(cut.sheet, job.level)) {
        std::string text = stopWarning(
            cut.sheet, *stop, job.book.prices.practice(), job.book.bench(), style);
        if (!text.empty())
            warnings.push_back(std::move(text));
    }
    for (const std::string& problem : cut.sheet.problems)
        warnings.push_back(oneLine(problem));
    return warnings;
}

int unmeasured(const CutFigures& cut, Id<Level> level) {
    int count = 0;
    for (const OpeningUnit& unit : cut.units)
        count += (!level || unit.opening.level == level) && !unit.isMeasured() ? 1 : 0;
    return count;
}

} // namespace

Paper sawSheetPaper(const PaperJob& job, const JobFigures& figures) {
    const CutFigures cut = cutFiguresFor(job.book, figures);
    const LengthStyle style = sawStyle(job.book.prices.shop());
    Paper paper = beginPaper("saw-sheet", "Saw sheet", job);
    paper.type = Paper::Type::wall;
    addSawFacts(paper, job, figures);
    paper.blocks.emplace_back(sawCaution());
    addCorrection(paper, cut.correction, style);
    if (const int count = unmeasured(cut, job.level); count > 0)
        paper.blocks.emplace_back(Paragraph{Paragraph::Style::caution,
            {std::to_string(count) + (count == 1 ? " opening is" : " openings are")
                + " cut to the plan's size: not measured yet."}});
    int pieces = 0;
    int stops = 0;
    for (PaperTable& table : SawSheetTables(job, figures, cut).tables()) {
        stops += static_cast<int>(table.rows.size());
        paper.blocks.emplace_back(std::move(table));
    }
    if (PaperTable sticks = SawSheetTables(job, figures, cut).sticks(); !sticks.rows.empty())
        paper.blocks.emplace_back(std::move(sticks));
    for (const SheetStop* stop : stopsOn(cut.sheet, job.level))
        pieces += static_cast<int>(stop->pieces.size());
    if (stops == 0)
        paper.blocks.emplace_back(Paragraph{Paragraph::Style::body, {"Nothing to cut yet."}});
    else
        paper.blocks.emplace_back(Paragraph{Paragraph::Style::body,
            {"Settings are short points. Second stop: so much further for the miter at the other "
             "end of the same stick. In brackets: what each reveal is moved by."}});
    addSection(paper, "Look at", Paragraph::Style::list, warningsOf(cut, job, style));
    paper.blocks.emplace_back(dustCaution());
    paper.totals.emplace_back("stop settings", countCell(stops));
    paper.totals.emplace_back("pieces", countCell(pieces));
    return paper;
}

} // namespace miterbook
