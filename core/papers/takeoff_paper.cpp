// SPDX-License-Identifier: GPL-3.0-or-later
#include "papers/job_papers.h"

#include "papers/cells.h"
#include "papers/heading.h"
#include "papers/incomplete.h"
#include "papers/plain_text.h"
#include "papers/takeoff_rows.h"
#include "papers/takeoff_tables.h"
#include "takeoff/forgotten.h"

#include <algorithm>
#include <map>

namespace miterbook {

namespace {

void addFacts(Paper& paper, const PaperJob& job, const JobFigures& figures) {
    addBuilder(paper, job, false);
    addPlan(paper, job);
    addPlace(paper, job, "Address");
    if (const Level* level = figures.whole.level(job.level))
        addFact(paper, "Level", level->name);
    addDate(paper, job, "Date", job.date);
}

void addTable(Paper& paper, PaperTable table) {
    if (!table.rows.empty())
        paper.blocks.emplace_back(std::move(table));
}

/// What should be looked at but keeps no number from being right.
std::vector<std::string> warnings(const PaperJob& job, const Takeoff& takeoff) {
    const Id<Level> level = job.level;
    std::vector<std::string> sentences;
    for (const Remark& remark :
        standing(takeoff.remarks, job.book.sheet(job.plan).of<Dismissal>())) {
        const std::string sentence = oneLine(remark.sentence);
        if (remark.weight == Remark::Weight::warning && (!level || remark.source.level == level)
            && std::ranges::find(sentences, sentence) == sentences.end())
            sentences.push_back(sentence);
    }
    return sentences;
}

void addOpeningCounts(Paper& paper, const WholePlan& plan, Id<Level> level) {
    int windows = 0;
    int doors = 0;
    int cased = 0;
    for (const Opening& opening : plan.openings) {
        if (level && opening.level != level)
            continue;
        int& count = opening.isWindow() ? windows : opening.isDoor() ? doors : cased;
        count += opening.count;
    }
    paper.totals.emplace_back("windows", countCell(windows));
    paper.totals.emplace_back("doors", countCell(doors));
    paper.totals.emplace_back("cased openings", countCell(cased));
}

/// Running feet or metres by what profiles are run as: "casing LF", "base m".
void addRuns(Paper& paper, const std::vector<PlaceTotals>& places, const PriceBook& prices) {
    std::map<ProfileUse, Quantity> runs;
    for (const TakeoffRow& row : summedRows(places, prices.shop().unit)) {
        const auto* id = std::get_if<Id<Profile>>(&row.item);
        if (const Profile* profile = id ? prices.profile(*id) : nullptr)
            runs[profile->use] += row.amount;
    }
    for (const auto& [use, amount] : runs)
        paper.totals.emplace_back(
            std::string(word(use)) + ' ' + unitText(Unit::linearFoot, prices.shop().unit),
            quantityCell(amount));
}

} // namespace

Paper takeoffPaper(const PaperJob& job, const JobFigures& figures) {
    const PriceBook& prices = job.book.prices;
    std::vector<PlaceTotals> places = totalsByPlace(figures.takeoff, figures.whole);
    if (job.level)
        std::erase_if(places, [&](const PlaceTotals& place) { return place.level != job.level; });

    Paper paper = beginPaper("takeoff", "Takeoff", job);
    addFacts(paper, job, figures);
    addIncomplete(paper, job, figures, {});
    if (places.empty())
        paper.blocks.emplace_back(Paragraph{Paragraph::Style::body, {"Nothing to take off yet."}});
    const TakeoffTables tables{figures, prices, places};
    addTable(paper, tables.sums());
    // What is asked for first goes first; the long lists of pieces come last.
    const std::vector<LevelPlaces> levels = byLevel(places, figures.whole);
    for (const LevelPlaces& level : levels)
        addTable(paper, tables.amounts(level));
    for (const LevelPlaces& level : levels)
        addTable(paper, tables.runs(level));
    for (const LevelPlaces& level : levels)
        addTable(paper, tables.pieces(level));
    addSection(paper, "Look at", Paragraph::Style::list, warnings(job, figures.takeoff));
    addOpeningCounts(paper, figures.whole, job.level);
    addRuns(paper, places, prices);
    return paper;
}

} // namespace miterbook
