// SPDX-License-Identifier: GPL-3.0-or-later
#include "papers/bill_papers.h"

#include "basics/number_text.h"
#include "papers/bill_facts.h"
#include "papers/cells.h"
#include "papers/heading.h"
#include "papers/plain_text.h"

namespace miterbook {

namespace {

Cell blankOr(Money money, const std::string& symbol) {
    return money == Money() ? Cell{{}, "0.00"} : moneyCell(money, symbol);
}

PaperTable movesTable(const Book& book, const AccountStatement& statement) {
    const Shop& shop = book.prices.shop();
    using enum PaperColumn::Align;
    PaperTable table;
    table.title = "What was billed and paid";
    table.columns = {{"Date", left, 14}, {"What", left, 34}, {"Billed", right, 16},
        {"Paid", right, 16}, {"Balance", right, 16}};
    table.rows.push_back({PaperTable::Kind::plain,
        {Cell::of(formatDate(statement.from, shop.monthFirst)), Cell::of("Balance brought forward"),
            Cell::of({}), Cell::of({}), moneyCell(statement.opening, shop.currency)}});
    for (const StatementLine& line : statement.lines) {
        table.rows.push_back({PaperTable::Kind::plain,
            {Cell::of(formatDate(line.date, shop.monthFirst)), Cell::of(oneLine(line.text)),
                blankOr(line.charge, shop.currency), blankOr(line.payment, shop.currency),
                moneyCell(line.balance, shop.currency)}});
    }
    table.rows.push_back({PaperTable::Kind::total,
        {Cell::of(formatDate(statement.to, shop.monthFirst)), Cell::of("Balance"), Cell::of({}),
            Cell::of({}), moneyCell(statement.closing, shop.currency)}});
    return table;
}

PaperTable agesTable(const Book& book, const AccountStatement& statement) {
    const std::string& symbol = book.prices.shop().currency;
    const AgingLine& ages = statement.ages;
    using enum PaperColumn::Align;
    PaperTable table;
    table.title = book.billing().ageFrom == AgeFrom::dueDate ? "Open, days past due"
                                                             : "Open, days since the invoice";
    table.columns = {{"0 to 30", right, 14}, {"31 to 60", right, 14}, {"61 to 90", right, 14},
        {"over 90", right, 14}, {"Credit", right, 14}, {"Owed", right, 14}};
    PaperTable::Row row;
    for (const Money bucket : ages.buckets)
        row.cells.push_back(moneyCell(bucket, symbol));
    row.cells.push_back(moneyCell(-ages.credit, symbol));
    row.cells.push_back(moneyCell(ages.owed(), symbol));
    table.rows.push_back(std::move(row));
    return table;
}

/// The builder's late invoices, and the shop's own words below them. Only what is so: no interest,
/// no threat.
void addLateNotice(Paper& paper, const Book& book, const AccountStatement& statement) {
    const BillingSetup& setup = book.billing();
    const auto late = lateBills(billsOn(statement.builder, statement.to, allBills(book)),
        paidBy(statement.to, allPayments(book), allAllocations(book)), statement.to,
        std::max(setup.lateDays, 1));
    if (late.empty())
        return;
    std::vector<std::string> lines{"Past due:"};
    for (const LateBill& each : late) {
        lines.push_back("Invoice " + numberText(book, each.bill.number) + " of "
            + formatDate(each.bill.date, book.prices.shop().monthFirst) + ": "
            + formatMoney(each.bill.open(), book.prices.shop().currency) + ", "
            + std::to_string(each.daysLate) + (each.daysLate == 1 ? " day late" : " days late"));
    }
    paper.blocks.emplace_back(Paragraph{Paragraph::Style::caution, std::move(lines)});
    if (auto words = typedLines(setup.lateNote); !words.empty())
        paper.blocks.emplace_back(Paragraph{Paragraph::Style::body, std::move(words)});
}

} // namespace

Paper statementPaper(const Book& book, Id<Builder> builder, Date from, Date to) {
    const AccountStatement statement = statementFor(builder, from, to, allBills(book),
        allPayments(book), allAllocations(book), book.billing().ageFrom, book.billing().prefix);
    const PaperJob job{book, {}, {}, {}, to};
    Paper paper = beginPaper("statement", "Statement", job);
    addDate(paper, job, "Date", to);
    addDate(paper, job, "From", from);
    addAddressee(paper, book, builder);
    addLateNotice(paper, book, statement);
    paper.blocks.emplace_back(movesTable(book, statement));
    paper.blocks.emplace_back(agesTable(book, statement));
    const std::string& symbol = book.prices.shop().currency;
    if (statement.retained != Money()) {
        addSection(paper, "Retainage", Paragraph::Style::body,
            {formatMoney(statement.retained, symbol)
                + " is held back on work billed so far; it is not in the balance."});
    }
    paper.totals.emplace_back("balance", moneyCell(statement.closing, symbol));
    paper.totals.emplace_back("retained", moneyCell(statement.retained, symbol));
    return paper;
}

} // namespace miterbook
