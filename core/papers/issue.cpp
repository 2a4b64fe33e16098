// SPDX-License-Identifier: GPL-3.0-or-later
#include "papers/issue.h"

#include "bill/account.h"
#include "papers/bill_papers.h"
#include "papers/freeze.h"

#include <algorithm>

namespace miterbook {

namespace {

/// Extras that the bill brings to their full price are billed; those it takes back are not.
void moveExtras(EditBuilder& edit, const Book& book, const Bill& bill, const Billing& before) {
    std::vector<Bill> bills = before.bills;
    bills.push_back(bill);
    const auto billed = billedByLine(bills);
    for (const InvoiceLine& line : bill.lines) {
        const Extra* extra = book.jobs.of<Extra>().find(line.extra);
        if (!extra)
            continue;
        const auto found = billed.find(line.key());
        const bool full = found != billed.end() && found->second == extra->price;
        if (const auto moved = full ? billedExtra(*extra) : unbilledExtra(*extra))
            edit.put(*moved);
    }
}

} // namespace

Result<Edit> issueBill(const Book& book, IdSource& ids, const Bill& made) {
    const auto before = billingOf(book, made.invoice.house);
    if (!before)
        return before.error();
    const auto number = nextNumber(book);
    if (!number)
        return number.error();
    Bill bill = numbered(made, *number, ids);
    const House& house = *book.house(bill.invoice.house);
    for (InvoiceLine& line : bill.lines)
        line.plan = house.work;

    IssuedPaper row;
    row.id = ids.next<IssuedPaper>();
    row.plan = house.work;
    row.kind = bill.invoice.kind == InvoiceKind::credit ? IssuedKind::creditNote
                                                        : IssuedKind::invoice;
    row.number = *number;
    row.date = bill.invoice.date;
    row.amount = bill.total();
    const auto paper = issuedPaper(std::move(row), invoicePaper(book, bill, *before));
    if (!paper)
        return paper.error();
    bill.invoice.paper = paper->id;

    EditBuilder edit(book,
        "Issue " + std::string(word(bill.invoice.kind)) + ' ' + numberText(book, *number) + " for "
            + house.name);
    edit.put(*paper);
    edit.put(bill.invoice);
    for (const InvoiceLine& line : bill.lines)
        edit.put(line);
    moveExtras(edit, book, bill, *before);
    return edit.take();
}

Result<Paper> invoiceAsIssued(const Book& book, const Invoice& invoice) {
    const House* house = book.house(invoice.house);
    const IssuedPaper* issued
        = house ? book.sheet(house->work).of<IssuedPaper>().find(invoice.paper) : nullptr;
    if (!issued)
        return Error{Fault::notFound, "The paper of that invoice is not in the book."};
    auto paper = paperAsIssued(*issued, book.prices);
    if (!paper)
        return paper;
    for (const auto& [id, made] : book.jobs.of<InvoiceVoid>()) {
        if (made.invoice != invoice.id)
            continue;
        paper->blocks.insert(paper->blocks.begin(),
            Paragraph{Paragraph::Style::caution,
                {"VOID since " + formatDate(made.date, book.prices.shop().monthFirst) + ": "
                    + made.reason}});
    }
    return paper;
}

} // namespace miterbook
