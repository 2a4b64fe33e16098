// SPDX-License-Identifier: GPL-3.0-or-later
#include "bill/take_back.h"

#include "basics/blank.h"
#include "basics/number_text.h"
#include "basics/quote.h"

#include <algorithm>

namespace miterbook {

namespace {

bool creditsBill(const Bill& each, const Bill& bill) {
    return each.counts() && each.invoice.credits == bill.invoice.id;
}

/// What counting credit notes have taken back of a draw so far; signed like the draw.
struct TakenBack {
    Money work;
    Money retained;
    Money tax;
    std::map<std::tuple<ValueKey, Id<Backcharge>>, Money> lines;
};

auto lineKey(const InvoiceLine& line) {
    return std::tuple(line.key(), line.backcharge);
}

TakenBack takenBack(const Bill& draw, const std::vector<Bill>& bills) {
    TakenBack taken;
    for (const Bill& each : bills) {
        if (!creditsBill(each, draw))
            continue;
        taken.work -= each.work();
        taken.retained -= each.invoice.retained;
        taken.tax -= each.invoice.tax;
        for (const InvoiceLine& line : each.lines)
            taken.lines[lineKey(line)] -= line.amount;
    }
    return taken;
}

/// Whether work that a credit note takes back is on a later bill of the house.
bool isBilledAgain(const Bill& note, const std::vector<Bill>& bills) {
    return std::ranges::any_of(bills, [&](const Bill& each) {
        return each.counts() && each.invoice.house == note.invoice.house
            && each.invoice.number > note.invoice.number
            && std::ranges::any_of(note.lines, [&](const InvoiceLine& line) {
                   return std::ranges::find(each.lines, lineKey(line), lineKey) != each.lines.end();
               });
    });
}

/// amount x part / whole, all of it when part is the whole.
Money inProportion(Money amount, Money part, Money whole) {
    if (part == whole || whole == Money())
        return amount;
    const Wide sign = whole < Money() ? -1 : 1;
    return Money::cents(
        roundedQuotient(Wide(amount.cents()) * part.cents() * sign, Wide(whole.cents()) * sign));
}

/// A line of the credit note; error when the draw's line does not hold so much any more.
Result<InvoiceLine> creditLine(InvoiceLine line, Money amount, Money taken) {
    const Money left = line.amount - taken;
    const bool fits = line.amount < Money() ? amount < Money() && amount >= left
                                            : amount > Money() && amount <= left;
    if (!fits) {
        return badInput(inQuotes(line.label) + " still bills " + formatMoney(left)
            + "; no other than a part of that can be taken back.");
    }
    line.id = {};
    line.invoice = {};
    line.amount = -amount;
    return line;
}

Result<void> addCreditLines(
    const Bill& draw, const TakenBack& taken, const std::vector<LineCredit>& credits, Bill& note) {
    for (const LineCredit& credit : credits) {
        const auto line = std::ranges::find(draw.lines, credit.line, &InvoiceLine::id);
        if (line == draw.lines.end())
            return badInput("The invoice has no such line to take back.");
        const auto before = taken.lines.find(lineKey(*line));
        auto made = creditLine(
            *line, credit.amount, before == taken.lines.end() ? Money() : before->second);
        if (!made)
            return made.error();
        note.lines.push_back(*std::move(made));
    }
    if (note.lines.empty())
        return badInput("Say what the credit note takes back.");
    return {};
}

Bill blankCredit(const Bill& draw, Date date, const std::string& reason) {
    Bill note;
    note.invoice = draw.invoice;
    note.invoice.id = {};
    note.invoice.number = 0;
    note.invoice.kind = InvoiceKind::credit;
    note.invoice.credits = draw.invoice.id;
    note.invoice.date = date;
    note.invoice.due = date;
    note.invoice.deposit = {};
    note.invoice.paper = {};
    note.invoice.note = reason;
    return note;
}

} // namespace

Result<void> checkVoid(
    const Bill& bill, const std::vector<Bill>& bills, const std::vector<Allocation>& allocations) {
    const auto refuse = [&](const std::string& why) {
        return badInput(
            "Number " + std::to_string(bill.invoice.number) + " cannot be voided: " + why);
    };
    if (!bill.counts())
        return refuse("it has been voided already.");
    if (std::ranges::find(allocations, bill.invoice.id, &Allocation::invoice) != allocations.end())
        return refuse(bill.invoice.kind == InvoiceKind::draw
                ? "something is paid on it; issue a credit note."
                : "something is paid on it; remove the payment first.");
    if (std::ranges::any_of(bills, [&](const Bill& each) { return creditsBill(each, bill); }))
        return refuse("a credit note takes it back already.");
    if (bill.invoice.kind == InvoiceKind::credit && isBilledAgain(bill, bills))
        return refuse("what it takes back has been billed again.");
    if (retainedOf(bills) - bill.invoice.retained < Money())
        return refuse("its retainage has been released since.");
    if (depositOf(bills) - bill.invoice.deposit < Money())
        return refuse("its deposit has been used up since.");
    return {};
}

Result<Bill> makeCredit(const Bill& draw, const std::vector<Bill>& bills,
    const std::vector<LineCredit>& credits, Date date, const std::string& reason) {
    if (!draw.counts() || draw.invoice.kind != InvoiceKind::draw)
        return badInput("A credit note takes back an invoice for work that counts.");
    if (isBlank(reason))
        return badInput("Say why the credit note is issued.");
    Bill note = blankCredit(draw, date, reason);
    const TakenBack taken = takenBack(draw, bills);
    if (const auto added = addCreditLines(draw, taken, credits, note); !added)
        return added.error();
    sumUp(note);
    const Money backSoFar = taken.work - note.work();
    const Money retained = inProportion(draw.invoice.retained, backSoFar, draw.work())
        - taken.retained;
    note.invoice.retained = -std::min(retained, retainedOf(bills));
    note.invoice.tax = taken.tax - inProportion(draw.invoice.tax, backSoFar, draw.work());
    return note;
}

} // namespace miterbook
