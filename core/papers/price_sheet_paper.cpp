// SPDX-License-Identifier: GPL-3.0-or-later
#include "papers/job_papers.h"

#include "basics/amount_text.h"
#include "job/price_sheet.h"
#include "papers/cells.h"
#include "papers/heading.h"
#include "papers/incomplete.h"
#include "papers/plain_text.h"

namespace miterbook {

namespace {

const PlanSet* setOf(const PaperJob& job) {
    const Plan* plan = job.book.plan(job.plan);
    return plan ? job.book.jobs.of<PlanSet>().find(plan->set) : nullptr;
}

/// `+$1,204.00`, `-$80.00`.
Cell changeCell(Money change, std::string_view symbol) {
    Cell cell = moneyCell(change, symbol);
    if (change > Money())
        cell.text.insert(0, "+");
    return cell;
}

std::string titleOf(const PlanPrices& prices, LengthUnit written) {
    const std::string name = oneLine(prices.name);
    return prices.floorArea == 0 ? name : name + ", " + floorText(prices.floorArea, written);
}

/// A column for the plan as drawn and each elevation; a row for the price and each option.
PaperTable tableOf(const PlanPrices& prices, const Shop& shop) {
    const std::string& symbol = shop.currency;
    PaperTable table;
    table.title = titleOf(prices, shop.unit);
    table.columns.push_back({"", PaperColumn::Align::left, 30});
    PaperTable::Row price{PaperTable::Kind::plain, {Cell::of("Plan price")}};
    for (const PlanPrices::Column& column : prices.columns) {
        const std::string name = oneLine(column.name);
        table.columns.push_back(
            {column.elevation ? "Elevation " + name : name, PaperColumn::Align::right, 14});
        price.cells.push_back(moneyCell(column.price, symbol));
    }
    table.rows.push_back(std::move(price));
    for (const PlanPrices::Option& option : prices.options) {
        PaperTable::Row row{PaperTable::Kind::plain, {Cell::of(oneLine(option.name))}};
        for (const Money change : option.changes)
            row.cells.push_back(changeCell(change, symbol));
        table.rows.push_back(std::move(row));
    }
    return table;
}

void addSheetFacts(Paper& paper, const PaperJob& job) {
    addBuilder(paper, job, true);
    if (const PlanSet* set = setOf(job)) {
        addFact(paper, "Plan set", set->name);
        addFact(paper, "Community", set->community);
    }
    addDate(paper, job, "Date", job.date);
    const int days = job.book.prices.terms().validDays;
    if (days > 0 && job.date.ok())
        addDate(paper, job, "Valid until", addDays(job.date, days));
}

std::vector<std::string> problemsOf(const std::vector<PlanPrices>& sheet) {
    std::vector<std::string> problems;
    for (const PlanPrices& prices : sheet) {
        for (const std::string& problem : prices.problems)
            problems.push_back(oneLine(prices.name) + ": " + problem);
    }
    if (sheet.empty())
        problems.emplace_back("There is no plan to price in this set.");
    return problems;
}

} // namespace

Paper priceSheetPaper(const PaperJob& job, const JobFigures&) {
    const Terms& terms = job.book.prices.terms();
    const PlanSet* set = setOf(job);
    StickMemory memory(sheetMemory);
    const std::vector<PlanPrices> sheet = set
        ? priceSheet(job.book, set->id, memory, Effort::thorough, job.stop, job.step)
        : std::vector<PlanPrices>();
    Paper paper = beginPaper("price-sheet", "Plan price sheet", job);
    if (set) {
        paper.footer = joined({paper.title, oneLine(set->name),
                                  formatDate(job.date, job.book.prices.shop().monthFirst)},
            "  ·  ");
    }
    addSheetFacts(paper, job);
    addIncomplete(paper, job, {}, problemsOf(sheet));
    for (const PlanPrices& prices : sheet)
        paper.blocks.emplace_back(tableOf(prices, job.book.prices.shop()));
    addSection(paper, "How to read it", Paragraph::Style::body,
        {"The price of a lot is the plan price under its elevation and, from the same column, what "
         "each of its options adds or takes off."});
    addSection(paper, "Included", Paragraph::Style::list, typedLines(terms.inclusions));
    addSection(paper, "Not included", Paragraph::Style::list, typedLines(terms.exclusions));
    addSection(paper, "Payment", Paragraph::Style::body, typedLines(terms.paymentTerms));
    return paper;
}

} // namespace miterbook
