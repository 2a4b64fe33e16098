// SPDX-License-Identifier: GPL-3.0-or-later
#include "papers/job_papers.h"

#include "basics/amount_text.h"
#include "papers/cells.h"
#include "papers/heading.h"
#include "papers/incomplete.h"
#include "papers/materials.h"
#include "papers/plain_text.h"

namespace miterbook {

namespace {

using Kind = PaperTable::Kind;

void addFacts(Paper& paper, const PaperJob& job) {
    addPlace(paper, job, "Deliver to");
    addPlan(paper, job);
    addBuilder(paper, job, false);
    addDate(paper, job, "Date", job.date);
}

/// No spare is said by saying nothing.
Cell spareCell(int spare) {
    return spare > 0 ? countCell(spare) : Cell{{}, "0"};
}

PaperTable::Row stickRow(const BuyLine& line, const PriceBook& prices) {
    const LengthStyle style = prices.shop().lengths();
    const Profile* profile = prices.profile(line.profile);
    return {Kind::plain,
        {Cell::of(std::string(prices.profileName(line.profile))),
            Cell::of(profile ? sizeText(*profile, style) : std::string()),
            Cell::of(profile ? profile->material : std::string()),
            Cell::of(profile ? gradeText(*profile) : std::string()), stickCell(line.length, style),
            countCell(line.count + line.spare), spareCell(line.spare)}};
}

struct StickSums {
    int sticks = 0;
    int spare = 0;
    Length running;
};

StickSums sumOf(const std::vector<BuyLine>& lines) {
    StickSums sums;
    for (const BuyLine& line : lines) {
        sums.sticks += line.count + line.spare;
        sums.spare += line.spare;
        sums.running += line.length * (line.count + line.spare);
    }
    return sums;
}

/// Sticks to buy; a count holds the spares that the last column says apart.
PaperTable sticksTable(const JobFigures& figures, const PriceBook& prices) {
    using enum PaperColumn::Align;
    PaperTable table;
    table.title = "Sticks";
    table.columns = {{"Profile", left, 30, true}, {"Size", left, 19, true},
        {"Material", left, 18, true}, {"Finish", left, 15, true},
        {stickTitle(prices.shop().lengths()), right, 13}, {"Count", right, 10},
        {"Of which spare", right, 11}};
    for (const BuyLine& line : figures.buy.sticks)
        table.rows.push_back(stickRow(line, prices));
    const StickSums sums = sumOf(figures.buy.sticks);
    table.rows.push_back({Kind::total,
        {Cell::of("Sticks in all"), Cell::of({}), Cell::of({}), Cell::of({}), Cell::of({}),
            countCell(sums.sticks), countCell(sums.spare)}});
    return table;
}

/// Goods that the yard is to deliver; what the builder supplies is nobody's order.
PaperTable partsTable(const BuyList& buy, int& total) {
    PaperTable table;
    table.title = "Parts";
    table.columns = {
        {"Part", PaperColumn::Align::left, 60}, {"Count", PaperColumn::Align::right, 12}};
    for (const PartLine& part : buy.parts) {
        if (part.builderSupplies || part.count <= 0)
            continue;
        total += part.count;
        table.rows.push_back({Kind::plain, {Cell::of(part.name), countCell(part.count)}});
    }
    return table;
}

Paragraph noSubstitutions(const Shop& shop) {
    const std::string phone = oneLine(shop.phone);
    return {Paragraph::Style::caution,
        {"No substitutions: call first" + (phone.empty() ? "." : ", " + phone + "."),
            "Profile, size, material, finish and length as listed. Tell us what is short or on "
            "back order before the truck leaves."}};
}

} // namespace

Paper orderPaper(const PaperJob& job, const JobFigures& figures) {
    const PriceBook& prices = job.book.prices;
    Paper paper = beginPaper("order", "Material order", job);
    addFacts(paper, job);
    addIncomplete(paper, job, figures, figures.buy.problems);
    paper.blocks.emplace_back(noSubstitutions(prices.shop()));
    if (!figures.buy.sticks.empty())
        paper.blocks.emplace_back(sticksTable(figures, prices));
    int parts = 0;
    if (PaperTable table = partsTable(figures.buy, parts); !table.rows.empty())
        paper.blocks.emplace_back(std::move(table));
    if (figures.buy.sticks.empty() && parts == 0)
        paper.blocks.emplace_back(Paragraph{Paragraph::Style::body, {"Nothing to order."}});
    paper.blocks.emplace_back(
        Signatures{{"Drop spot on the site", "Needed by", "Ordered by", "Date"}});
    const StickSums sums = sumOf(figures.buy.sticks);
    paper.totals.emplace_back("sticks", countCell(sums.sticks));
    paper.totals.emplace_back("spare sticks", countCell(sums.spare));
    const LengthUnit written = prices.shop().unit;
    paper.totals.emplace_back(
        written == LengthUnit::millimetres ? "running metres" : "running feet",
        quantityCell(runSaid(sums.running, written)));
    paper.totals.emplace_back("parts", countCell(parts));
    return paper;
}

} // namespace miterbook
