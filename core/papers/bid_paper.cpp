// SPDX-License-Identifier: GPL-3.0-or-later
#include "papers/job_papers.h"

#include "papers/cells.h"
#include "papers/heading.h"
#include "papers/incomplete.h"
#include "papers/materials.h"
#include "basics/quote.h"
#include "papers/plain_text.h"
#include "papers/scope_words.h"

namespace miterbook {

namespace {

void addFacts(Paper& paper, const PaperJob& job) {
    addBuilder(paper, job, true);
    addPlan(paper, job);
    addPlace(paper, job, "Address");
    addDate(paper, job, "Date", job.date);
    const int days = job.book.prices.terms().validDays;
    if (days > 0 && job.date.ok())
        addDate(paper, job, "Valid until", addDays(job.date, days));
}

/// One line for each piece of work; the total is the sum of the lines printed.
PaperTable priceTable(const JobFigures& figures, const PriceBook& prices, Money& total) {
    PaperTable table;
    table.title = "Work and price";
    table.columns = {{"Piece of work", PaperColumn::Align::left, 16},
        {"Comprising", PaperColumn::Align::left, 66}, {"Price", PaperColumn::Align::right, 14}};
    const std::string& symbol = prices.shop().currency;
    for (const WorkTotal& work : figures.estimate.works) {
        total += work.price;
        table.rows.push_back({PaperTable::Kind::plain,
            {Cell::of(capitalised(word(work.work))),
                Cell::of(scopeWords(work.work, figures, prices)), moneyCell(work.price, symbol)}});
    }
    table.rows.push_back({PaperTable::Kind::total,
        {Cell::of("Total"), Cell::of({}), moneyCell(total, symbol)}});
    return table;
}

std::vector<std::string> problemsOf(const JobFigures& figures) {
    std::vector<std::string> problems = figures.estimate.problems;
    if (figures.estimate.works.empty())
        problems.emplace_back("Nothing is priced yet.");
    return problems;
}

/// Lines for both sides to sign and date.
Signatures signatures(const Paper& paper, const PaperJob& job) {
    const Plan* plan = job.book.plan(job.plan);
    const Builder* builder = plan ? job.book.builderOf(*plan) : nullptr;
    return {{paper.letterhead.front(), "Date",
        builder ? oneLine(builder->name) : std::string("Builder"), "Date"}};
}

} // namespace

Paper bidPaper(const PaperJob& job, const JobFigures& figures) {
    const PriceBook& prices = job.book.prices;
    const BidSetup& setup = figures.setup;
    Paper paper = beginPaper("bid", "Bid", job);
    addFacts(paper, job);
    addIncomplete(paper, job, figures, problemsOf(figures));
    addSection(paper, "Scope", Paragraph::Style::body, typedLines(setup.scope));
    Money total;
    paper.blocks.emplace_back(priceTable(figures, prices, total));
    paper.totals.emplace_back("price", moneyCell(total, prices.shop().currency));
    if (PaperTable materials = materialsTable(figures.takeoff, prices); !materials.rows.empty())
        paper.blocks.emplace_back(std::move(materials));
    addSection(paper, "Included", Paragraph::Style::list, typedLines(setup.inclusions));
    addSection(paper, "Not included", Paragraph::Style::list, typedLines(setup.exclusions));
    addSection(paper, "Payment", Paragraph::Style::body, typedLines(prices.terms().paymentTerms));
    paper.blocks.emplace_back(signatures(paper, job));
    return paper;
}

} // namespace miterbook
