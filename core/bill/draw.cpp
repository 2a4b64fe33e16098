// SPDX-License-Identifier: GPL-3.0-or-later
#include "bill/draw.h"

#include "basics/number_text.h"
#include "basics/quote.h"

#include <algorithm>

namespace miterbook {

namespace {

Bill blankBill(const Billing& billing, InvoiceKind kind, Date date) {
    Bill bill;
    Invoice& invoice = bill.invoice;
    invoice.kind = kind;
    invoice.house = billing.contract.house;
    invoice.builder = billing.contract.builder;
    invoice.date = date;
    invoice.due = addDays(date, billing.contract.dueDays);
    invoice.lot = billing.lot;
    invoice.purchaseOrder = billing.contract.purchaseOrder;
    return bill;
}

/// Whether `now` is nearer to no work than `before`, for a line that brings or takes.
bool goesBack(Money now, Money before, Money whole) {
    return whole < Money() ? now > before : now < before;
}

/// The line of a draw for a share to date; no amount where nothing is new.
Result<InvoiceLine> drawLine(const ValueLine& line, Percent toDate, Money before) {
    if (toDate > Percent::hundred() || toDate < Percent()) {
        return badInput(line.label + " cannot be " + formatPercent(toDate)
            + " % done; a share is from 0 to 100 %.");
    }
    const Money now = share(line.amount, toDate);
    if (goesBack(now, before, line.amount)) {
        return badInput(line.label + " has been billed up to " + formatMoney(before)
            + " already, which is more than " + formatPercent(toDate)
            + " % of it; a credit note takes back.");
    }
    InvoiceLine made;
    made.work = line.key.work;
    made.extra = line.key.extra;
    made.label = line.label;
    made.toDate = toDate;
    made.amount = now - before;
    return made;
}

Result<void> addLines(const Billing& billing, const DrawAsk& ask, Bill& bill) {
    const auto billed = billedByLine(billing.bills);
    for (const ValueLine& line : billing.schedule) {
        const auto share = std::ranges::find(ask.progress, line.key, &ValueProgress::key);
        if (share == ask.progress.end())
            continue;
        const auto before = billed.find(line.key);
        auto made = drawLine(
            line, share->toDate, before == billed.end() ? Money() : before->second);
        if (!made)
            return made.error();
        if (made->amount != Money())
            bill.lines.push_back(*std::move(made));
    }
    return {};
}

void takeOff(const std::vector<Backcharge>& backcharges, Bill& bill) {
    for (const Backcharge& backcharge : backcharges) {
        InvoiceLine line;
        line.work = PieceOfWork::extras;
        line.backcharge = backcharge.id;
        line.label = "Backcharge: " + backcharge.reason;
        line.amount = -backcharge.amount;
        bill.lines.push_back(line);
    }
}

Result<void> checkFree(const Backcharge& backcharge, const std::vector<Bill>& bills) {
    if (backcharge.state != BackchargeState::accepted || backcharge.amount <= Money()) {
        return badInput("The backcharge " + inQuotes(backcharge.reason)
            + " has not been accepted and cannot come off a bill.");
    }
    for (const Bill& bill : bills) {
        const bool taken = bill.counts()
            && std::ranges::find(bill.lines, backcharge.id, &InvoiceLine::backcharge)
                != bill.lines.end();
        if (taken) {
            return badInput(
                "The backcharge " + inQuotes(backcharge.reason) + " has come off a bill already.");
        }
    }
    return {};
}

} // namespace

Result<Bill> makeDraw(const Billing& billing, const DrawAsk& ask) {
    Bill bill = blankBill(billing, InvoiceKind::draw, ask.date);
    if (const auto added = addLines(billing, ask, bill); !added)
        return added.error();
    if (bill.lines.empty())
        return badInput(
            "There is nothing to bill: nothing more has been done since the last draw.");
    for (const Backcharge& backcharge : ask.backcharges) {
        if (const auto free = checkFree(backcharge, billing.bills); !free)
            return free.error();
    }
    takeOff(ask.backcharges, bill);
    sumUp(bill);
    if (ask.deposit < Money() || ask.deposit > depositOf(billing.bills)) {
        return badInput("Only " + formatMoney(depositOf(billing.bills))
            + " of deposits is left to be used up.");
    }
    const Money work = bill.work();
    Invoice& invoice = bill.invoice;
    invoice.retained = std::max(
        share(work, billing.contract.retainage), std::min(Money(), -retainedOf(billing.bills)));
    invoice.taxRate = billing.contract.tax;
    invoice.tax = share(work, invoice.taxRate);
    invoice.deposit = -ask.deposit;
    if (work > Money() && bill.total() < Money()) {
        return badInput("What comes off is " + formatMoney(-bill.total())
            + " more than the draw brings; leave some of it for the next one.");
    }
    return bill;
}

Result<Bill> makeDeposit(const Billing& billing, Date date, Money amount) {
    if (amount <= Money())
        return badInput("A deposit must be more than nothing.");
    const HouseAccount account = houseAccount(billing.schedule, billing.bills);
    if (amount > account.unbilled - account.deposit) {
        return badInput(
            "A deposit of " + formatMoney(amount) + " is more than the house still brings.");
    }
    Bill bill = blankBill(billing, InvoiceKind::deposit, date);
    bill.invoice.deposit = amount;
    return bill;
}

Result<Bill> makeRelease(const Billing& billing, Date date, Money amount) {
    const Money held = retainedOf(billing.bills);
    if (amount <= Money() || amount > held) {
        return badInput("There is " + formatMoney(held)
            + " of retainage held; more than nothing and no more than that can be released.");
    }
    Bill bill = blankBill(billing, InvoiceKind::release, date);
    bill.invoice.retained = -amount;
    return bill;
}

PaymentRequest paymentRequest(const std::vector<Bill>& before, const Bill& bill) {
    PaymentRequest request;
    for (const Bill& each : before) {
        if (!each.counts())
            continue;
        request.earned += each.work();
        request.previousDeductions += each.backcharges();
        request.previousRetained += each.invoice.retained;
        request.previousPayments += each.total() - each.invoice.tax - each.invoice.deposit;
    }
    request.earned += bill.work();
    request.retained = std::max(bill.invoice.retained, Money());
    request.retainedRefunded = std::max(-bill.invoice.retained, Money());
    request.deductions = std::max(bill.backcharges(), Money());
    request.deductionsRefunded = std::max(-bill.backcharges(), Money());
    return request;
}

Bill numbered(Bill bill, int number, IdSource& ids) {
    bill.invoice.number = number;
    bill.invoice.id = ids.next<Invoice>();
    for (InvoiceLine& line : bill.lines) {
        line.id = ids.next<InvoiceLine>();
        line.invoice = bill.invoice.id;
    }
    return bill;
}

} // namespace miterbook
