// SPDX-License-Identifier: GPL-3.0-or-later
#include "job/issued_check.h"

#include "basics/sha256.h"
#include "bill/take_back.h"
#include "job/bills.h"

#include <algorithm>

namespace miterbook {

namespace {

template <class Row>
std::vector<Row> added(const Edit& edit) {
    std::vector<Row> rows;
    for (const Change& change : edit.changes) {
        if (change.before || !change.after)
            continue;
        if (const Row* row = change.after->as<Row>())
            rows.push_back(*row);
    }
    return rows;
}

Error conflict(std::string sentence) {
    return {Fault::conflict, std::move(sentence)};
}

/// What is said of a row that stays as it was issued; empty for rows that may change.
std::string stays(const Book& book, const AnyRow& row) {
    const auto said = [&](const Invoice* invoice) {
        const std::string what = invoice
            ? std::string(word(invoice->kind)) + ' ' + numberText(book, invoice->number)
            : std::string("invoice");
        return "The " + what
            + " has been issued and stays as it is: void it or issue a credit note.";
    };
    if (const auto* invoice = row.as<Invoice>())
        return said(invoice);
    if (const auto* line = row.as<InvoiceLine>())
        return said(book.jobs.of<Invoice>().find(line->invoice));
    if (row.is<InvoiceVoid>())
        return "An invoice that has been voided stays so: bill the work again.";
    if (const auto* paper = row.as<IssuedPaper>()) {
        return "The " + std::string(word(paper->kind)) + ' ' + std::to_string(paper->number)
            + " has been given out of hand and stays as it is: issue another one.";
    }
    return {};
}

Result<void> checkPaper(const IssuedPaper& paper) {
    if (paper.number < 1 || paper.revision < 0 || !paper.date.ok())
        return badInput("A paper is issued with a number and a date.");
    if (paper.paper.text.empty() || paper.sum != sha256(paper.paper.text))
        return badInput("The text of the paper is not what its SHA-256 says.");
    return {};
}

Result<void> checkLines(const Book& book, const Invoice& invoice, const Edit& edit) {
    Bill bill{invoice, {}, {}};
    const House* house = book.house(invoice.house);
    for (const InvoiceLine& line : added<InvoiceLine>(edit)) {
        if (line.invoice != invoice.id)
            continue;
        if (!house || line.plan != house->work)
            return badInput("The lines of an invoice belong to its house.");
        bill.lines.push_back(line);
    }
    sumUp(bill);
    if (bill.invoice != invoice)
        return badInput("The sums of the invoice are not those of its lines.");
    return {};
}

Result<void> checkInvoice(const Book& book, const Invoice& invoice, int number, const Edit& edit) {
    if (invoice.number != number) {
        return conflict("The next invoice is number " + numberText(book, number) + ", not "
            + numberText(book, invoice.number) + ".");
    }
    if (!invoice.date.ok() || !invoice.due.ok())
        return badInput("Say the day of the invoice.");
    const auto papers = added<IssuedPaper>(edit);
    const auto paper = std::ranges::find(papers, invoice.paper, &IssuedPaper::id);
    const IssuedKind kind = invoice.kind == InvoiceKind::credit ? IssuedKind::creditNote
                                                                : IssuedKind::invoice;
    if (paper == papers.end() || paper->number != number || paper->kind != kind
        || paper->amount != invoice.total())
        return badInput("An invoice is issued together with its paper.");
    return checkLines(book, invoice, edit);
}

Result<void> checkNewInvoices(const Book& book, const Edit& edit) {
    const auto invoices = added<Invoice>(edit);
    for (const InvoiceLine& line : added<InvoiceLine>(edit)) {
        if (std::ranges::find(invoices, line.invoice, &Invoice::id) == invoices.end())
            return badInput("A line of an invoice is issued together with its invoice.");
    }
    if (invoices.empty())
        return {};
    auto number = nextNumber(book);
    if (!number)
        return number.error();
    for (const Invoice& invoice : invoices) {
        if (auto checked = checkInvoice(book, invoice, *number, edit); !checked)
            return checked;
        ++*number;
    }
    return {};
}

Result<void> checkNewVoids(const Book& book, const Edit& edit) {
    const auto allocations = allAllocations(book);
    for (const InvoiceVoid& voided : added<InvoiceVoid>(edit)) {
        const auto bill = findBill(book, voided.invoice);
        if (!bill)
            return Error{Fault::notFound, "That invoice is not in the book."};
        const House* house = book.house(bill->invoice.house);
        if (!house || !book.isOpen(house->work))
            return badInput("The house of the invoice has to be opened first.");
        if (!voided.date.ok() || voided.reason.empty())
            return badInput("Say when and why the invoice is voided.");
        if (voided.date < bill->invoice.date)
            return badInput("An invoice cannot be voided before the day it was issued, "
                + isoDate(bill->invoice.date) + ".");
        const auto can = checkVoid(*bill, billsOf(book, bill->invoice.house), allocations);
        if (!can)
            return can;
    }
    return {};
}

} // namespace

Result<void> checkIssued(const Book& book, const Edit& edit) {
    for (const Change& change : edit.changes) {
        if (!change.before || change.before == change.after)
            continue;
        if (std::string why = stays(book, *change.before); !why.empty())
            return conflict(std::move(why));
    }
    for (const IssuedPaper& paper : added<IssuedPaper>(edit)) {
        if (auto checked = checkPaper(paper); !checked)
            return checked;
    }
    if (auto checked = checkNewInvoices(book, edit); !checked)
        return checked;
    return checkNewVoids(book, edit);
}

} // namespace miterbook
