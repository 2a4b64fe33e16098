// SPDX-License-Identifier: GPL-3.0-or-later
#include "papers/bid_paper.h"

#include "papers/bid_parts.h"

#include "basics/quote.h"
#include "papers/cells.h"
#include "papers/heading.h"
#include "papers/incomplete.h"
#include "papers/materials.h"
#include "papers/plain_text.h"
#include "papers/scope_words.h"

namespace miterbook {

namespace {

/// "Bid", "Bid 12", "Bid 12, revision 2".
std::string titleOf(const BidHeading& heading) {
    std::string title = "Bid";
    if (heading.number > 0)
        title += ' ' + std::to_string(heading.number);
    if (heading.revision > 1)
        title += ", revision " + std::to_string(heading.revision);
    return title;
}

void addFacts(Paper& paper, const PaperJob& job, const BidHeading& heading) {
    if (heading.number > 0)
        addFact(paper, "Number", std::to_string(heading.number));
    if (heading.inPlaceOf != noDate) {
        addFact(paper, "Revision",
            std::to_string(heading.revision) + ", in place of that of "
                + formatDate(heading.inPlaceOf, job.book.prices.shop().monthFirst));
    }
    addBuilder(paper, job, true);
    addPlan(paper, job);
    addPlace(paper, job, "Address");
    addDate(paper, job, "Date", job.date);
    addDate(paper, job, "Valid until", validUntil(job));
}

/// One line for each piece of work; the total is the sum of the lines printed.
PaperTable priceTable(const JobFigures& figures, const PriceBook& prices, Money& total) {
    const bool brief = figures.setup.onePage;
    PaperTable table;
    table.title = "Work and price";
    table.columns = {{"Piece of work", PaperColumn::Align::left, brief ? 60 : 16},
        {"Comprising", PaperColumn::Align::left, 66}, {"Price", PaperColumn::Align::right, 14}};
    if (brief)
        table.columns.erase(table.columns.begin() + 1);
    const std::string& symbol = prices.shop().currency;
    for (const WorkTotal& work : figures.estimate.works) {
        total += work.price;
        table.rows.push_back({PaperTable::Kind::plain,
            {Cell::of(capitalised(word(work.work))),
                Cell::of(brief ? std::string() : scopeWords(work.work, figures, prices)),
                moneyCell(work.price, symbol)}});
    }
    table.rows.push_back(
        {PaperTable::Kind::total, {Cell::of("Total"), Cell::of({}), moneyCell(total, symbol)}});
    for (PaperTable::Row& row : table.rows) {
        if (brief)
            row.cells.erase(row.cells.begin() + 1);
    }
    return table;
}

std::vector<std::string> problemsOf(const JobFigures& figures) {
    std::vector<std::string> problems = figures.estimate.problems;
    if (figures.estimate.works.empty())
        problems.emplace_back("Nothing is priced yet.");
    return problems;
}

void addUnlessEmpty(Paper& paper, PaperTable table) {
    if (!table.rows.empty())
        paper.blocks.emplace_back(std::move(table));
}

/// Lines for both sides to sign and date.
Signatures signatures(const Paper& paper, const PaperJob& job) {
    const Plan* plan = job.book.plan(job.plan);
    const Builder* builder = plan ? job.book.builderOf(*plan) : nullptr;
    return {{paper.letterhead.front(), "Date",
        builder ? oneLine(builder->name) : std::string("Builder"), "Date"}};
}

} // namespace

Date validUntil(const PaperJob& job) {
    const int days = job.book.prices.terms().validDays;
    return days > 0 && job.date.ok() ? addDays(job.date, days) : noDate;
}

Paper bidPaper(const PaperJob& job, const JobFigures& figures) {
    return bidPaper(
        job, figures, {}, alternatesFor(job.book, job.plan, job.selection, figures, job.stop));
}

Paper bidPaper(const PaperJob& job, const JobFigures& figures, const BidHeading& heading,
    const std::vector<Alternate>& alternates) {
    const PriceBook& prices = job.book.prices;
    const BidSetup& setup = figures.setup;
    Paper paper = beginPaper("bid", titleOf(heading), job);
    addFacts(paper, job, heading);
    addIncomplete(paper, job, figures, problemsOf(figures));
    addSection(paper, "Scope", Paragraph::Style::body, typedLines(setup.scope));
    Money total;
    paper.blocks.emplace_back(priceTable(figures, prices, total));
    paper.totals.emplace_back("price", moneyCell(total, prices.shop().currency));
    addUnlessEmpty(paper, allowancesTable(setup, prices));
    addUnlessEmpty(paper, alternatesTable(alternates, prices));
    if (!setup.onePage)
        addUnlessEmpty(paper, materialsTable(figures.takeoff, prices));
    if (setup.quoteUnits)
        addUnlessEmpty(paper, unitPricesTable(prices));
    addSection(paper, "Included", Paragraph::Style::list, typedLines(setup.inclusions));
    addSection(paper, "Not included", Paragraph::Style::list, typedLines(setup.exclusions));
    addSection(paper, "Payment", Paragraph::Style::body, typedLines(prices.terms().paymentTerms));
    paper.blocks.emplace_back(signatures(paper, job));
    return paper;
}

} // namespace miterbook
