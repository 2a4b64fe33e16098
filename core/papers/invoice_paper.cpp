// SPDX-License-Identifier: GPL-3.0-or-later
#include "papers/bill_papers.h"

#include "basics/number_text.h"
#include "basics/quote.h"
#include "bill/account.h"
#include "papers/bill_facts.h"
#include "papers/cells.h"
#include "papers/exact_numbers.h"
#include "papers/heading.h"
#include "papers/plain_text.h"

#include <algorithm>

namespace miterbook {

namespace {

using LineKind = PaperTable::Kind;

Cell percentCell(Percent percent) {
    return {formatPercent(percent) + " %", exactDecimal(percent.basisPoints(), 2, 0)};
}

void addInvoiceFacts(Paper& paper, const Book& book, const Invoice& invoice, const PaperJob& job) {
    addFact(paper, "Number", numberText(book, invoice.number));
    addDate(paper, job, "Date", invoice.date);
    if (invoice.kind != InvoiceKind::credit)
        addDate(paper, job, "Due", invoice.due);
    addAddressee(paper, book, invoice.builder);
    addHouse(paper, job);
    addFact(paper, "Purchase order", invoice.purchaseOrder);
    if (const Invoice* credited = book.jobs.of<Invoice>().find(invoice.credits)) {
        addFact(paper, "Takes back",
            "part or all of invoice " + numberText(book, credited->number) + " of "
                + formatDate(credited->date, book.prices.shop().monthFirst));
    }
}

/// What is on this bill of a line of the schedule of values.
Money amountOn(const Bill& bill, const ValueKey& key) {
    Money sum;
    for (const InvoiceLine& line : bill.lines) {
        if (!line.backcharge && line.key() == key)
            sum += line.amount;
    }
    return sum;
}

/// How much of a line is billed with this bill: exactly as said for a line of it.
Percent billedShare(const Bill& bill, const ValueLine& line, Money billed) {
    for (const InvoiceLine& each : bill.lines) {
        if (!each.backcharge && each.key() == line.key)
            return each.toDate;
    }
    if (line.amount == Money())
        return {};
    return Percent::basisPoints(
        roundedQuotient(Wide(billed.cents()) * 10'000, Wide(line.amount.cents())));
}

/// The whole schedule of values with what was billed before and what this bill adds.
PaperTable workTable(const Book& book, const Bill& bill, const Billing& before) {
    const std::string& symbol = book.prices.shop().currency;
    using enum PaperColumn::Align;
    PaperTable table;
    table.title = "Work";
    table.columns = {{"Work", left, 34}, {"Agreed", right, 15}, {"Done to date", right, 12},
        {"Billed before", right, 15}, {"This invoice", right, 15}};
    const auto billed = billedByLine(before.bills);
    Money agreed;
    Money earlier;
    for (const ValueLine& line : before.schedule) {
        const auto found = billed.find(line.key);
        const Money was = found == billed.end() ? Money() : found->second;
        const Money now = amountOn(bill, line.key);
        agreed += line.amount;
        earlier += was;
        table.rows.push_back({LineKind::plain,
            {Cell::of(oneLine(line.label)), moneyCell(line.amount, symbol),
                percentCell(billedShare(bill, line, was + now)), moneyCell(was, symbol),
                moneyCell(now, symbol)}});
    }
    table.rows.push_back({LineKind::total,
        {Cell::of("Total"), moneyCell(agreed, symbol), Cell::of({}), moneyCell(earlier, symbol),
            moneyCell(bill.work(), symbol)}});
    return table;
}

/// What a credit note takes back, line by line.
PaperTable takenBackTable(const Book& book, const Bill& bill) {
    using enum PaperColumn::Align;
    PaperTable table;
    table.title = "Taken back";
    table.columns = {{"Work", left, 50}, {"Amount", right, 16}};
    for (const InvoiceLine& line : bill.lines)
        table.rows.push_back(moneyRow(line.label, line.amount, book));
    table.rows.push_back(
        moneyRow("Total", bill.work() - bill.backcharges(), book, LineKind::total));
    return table;
}

void addDue(PaperTable& table, const std::string& what, Money money, const Book& book) {
    if (money != Money())
        table.rows.push_back(moneyRow(what, money, book));
}

std::string retainageWords(const Bill& bill, const Billing& before) {
    if (bill.invoice.kind == InvoiceKind::release)
        return "Retainage released";
    if (bill.invoice.retained < Money())
        return "Retainage given back";
    return "Retainage held, " + formatPercent(before.contract.retainage) + " %";
}

/// From the work to what has to be paid.
PaperTable dueTable(const Book& book, const Bill& bill, const Billing& before) {
    const Invoice& invoice = bill.invoice;
    using enum PaperColumn::Align;
    PaperTable table;
    table.title = invoice.kind == InvoiceKind::credit ? "Credit" : "Due";
    table.columns = {{"", left, 50}, {"Amount", right, 16}};
    addDue(table, "Work", bill.work(), book);
    addDue(table, retainageWords(bill, before), -invoice.retained, book);
    for (const InvoiceLine& line : bill.lines) {
        if (line.backcharge)
            addDue(table, line.label, line.amount, book);
    }
    addDue(table, invoice.deposit < Money() ? "Deposit used up" : "Deposit ahead of the work",
        invoice.deposit, book);
    addDue(table, "Sales tax, " + formatPercent(invoice.taxRate) + " %", invoice.tax, book);
    table.rows.push_back(moneyRow(invoice.kind == InvoiceKind::credit ? "Credited" : "Due now",
        bill.total(), book, LineKind::total));
    return table;
}

/// Where the contract stands with this bill; tax and deposits aside.
PaperTable accountTable(const Book& book, const Bill& bill, const Billing& before) {
    std::vector<Bill> bills = before.bills;
    bills.push_back(bill);
    const HouseAccount account = houseAccount(before.schedule, bills);
    using enum PaperColumn::Align;
    PaperTable table;
    table.title = "The contract with this paper, before tax";
    table.columns = {{"", left, 50}, {"Amount", right, 16}};
    table.rows.push_back(moneyRow("Contract", account.contract, book));
    addDue(table, "Extras agreed", account.extras, book);
    table.rows.push_back(moneyRow("Billed to date, retainage aside", account.billed, book));
    addDue(table, "Retainage held", account.retained, book);
    table.rows.push_back(moneyRow("Still to be billed", account.unbilled, book, LineKind::total));
    addDue(table, "Deposit not used up", account.deposit, book);
    return table;
}

} // namespace

Paper invoicePaper(const Book& book, const Bill& bill, const Billing& before) {
    const Invoice& invoice = bill.invoice;
    const bool isCredit = invoice.kind == InvoiceKind::credit;
    const PaperJob job = houseJob(book, invoice.house, invoice.date);
    Paper paper = beginPaper(isCredit ? "credit-note" : "invoice",
        capitalised(word(invoice.kind)) + ' ' + numberText(book, invoice.number), job);
    addInvoiceFacts(paper, book, invoice, job);
    if (isCredit)
        addSection(paper, "Why", Paragraph::Style::body, typedLines(invoice.note));
    if (isCredit)
        paper.blocks.emplace_back(takenBackTable(book, bill));
    else if (invoice.kind == InvoiceKind::draw)
        paper.blocks.emplace_back(workTable(book, bill, before));
    paper.blocks.emplace_back(dueTable(book, bill, before));
    paper.blocks.emplace_back(accountTable(book, bill, before));
    if (!isCredit) {
        addSection(
            paper, "Payment", Paragraph::Style::body, typedLines(book.prices.terms().paymentTerms));
    }
    paper.totals.emplace_back(
        isCredit ? "credited" : "due", moneyCell(bill.total(), book.prices.shop().currency));
    return paper;
}

} // namespace miterbook
