// SPDX-License-Identifier: GPL-3.0-or-later
#include "job/money_check.h"

#include "basics/number_text.h"
#include "basics/quote.h"
#include "bill/account.h"
#include "job/bills.h"
#include "job/rows_after.h"

#include <algorithm>
#include <set>

namespace miterbook {

namespace {

/// The rows of one kind as the edit will leave them.
template <class Row>
std::vector<Row> rowsAfter(const Book& book, const Edit& edit) {
    std::vector<Row> rows;
    for (const auto& [id, row] : tableAfter<Row>(book, edit))
        rows.push_back(row);
    return rows;
}

/// Payments whose own amount or parts the edit changes.
std::set<Id<Payment>> paymentsTouched(const Edit& edit) {
    std::set<Id<Payment>> ids;
    for (const Change& change : edit.changes) {
        if (const auto* payment = rowIn<Payment>(change.after))
            ids.insert(payment->id);
        if (const auto* part = rowIn<Allocation>(change.after))
            ids.insert(part->payment);
    }
    return ids;
}

Result<void> checkPart(
    const Allocation& part, const std::vector<Payment>& payments, const std::vector<Bill>& bills) {
    const auto payment = std::ranges::find(payments, part.payment, &Payment::id);
    const auto bill = std::ranges::find(
        bills, part.invoice, [](const Bill& each) { return each.invoice.id; });
    if (part.amount <= Money())
        return badInput("Say how much of the payment goes to the invoice.");
    if (payment == payments.end() || bill == bills.end())
        return badInput("A part of a payment goes to an invoice of the book.");
    if (bill->invoice.builder != payment->builder || !bill->counts())
        return badInput("A payment pays invoices of its builder that count.");
    return {};
}

/// No invoice that the edit pays more of is paid beyond what it asks.
Result<void> checkPaid(const Book& book, const Edit& edit, const std::vector<Bill>& bills,
    const std::vector<Allocation>& parts) {
    for (const OpenBill& bill : openBills(bills, parts)) {
        if (bill.open() >= Money())
            continue;
        const bool paidMore = std::ranges::any_of(edit.changes, [&](const Change& change) {
            const auto* after = rowIn<Allocation>(change.after);
            const auto* before = rowIn<Allocation>(change.before);
            return after && after->invoice == bill.invoice
                && (!before || before->amount < after->amount);
        });
        if (paidMore) {
            return badInput("Invoice " + numberText(book, bill.number) + " asks for "
                + formatMoney(bill.total)
                + "; it cannot be paid by more. What is over stays with "
                  "the builder.");
        }
    }
    return {};
}

Result<void> checkPayments(const Book& book, const Edit& edit) {
    if (!touches<Payment, Allocation>(edit.changes))
        return {};
    const auto payments = rowsAfter<Payment>(book, edit);
    const auto parts = rowsAfter<Allocation>(book, edit);
    const auto bills = allBills(book);
    for (const Change& change : edit.changes) {
        if (const auto* part = rowIn<Allocation>(change.after)) {
            if (auto checked = checkPart(*part, payments, bills); !checked)
                return checked;
        }
    }
    for (const Id<Payment> id : paymentsTouched(edit)) {
        const auto payment = std::ranges::find(payments, id, &Payment::id);
        if (payment != payments.end() && unallocated(*payment, parts) < Money()) {
            return badInput("More than the payment of " + formatMoney(payment->amount)
                + " would be spread over invoices.");
        }
    }
    return checkPaid(book, edit, bills, parts);
}

/// The price of an agreed extra stands, and an extra moves to no other house.
Result<void> checkAgreedPrice(const Change& change) {
    const auto* before = rowIn<Extra>(change.before);
    const auto* after = rowIn<Extra>(change.after);
    if (!before || !after)
        return {};
    if (before->house != after->house)
        return badInput("The extra " + inQuotes(after->title) + " belongs to its house.");
    if (isAgreed(*before) && isAgreed(*after) && before->price != after->price) {
        return badInput("The extra " + inQuotes(after->title) + " has been agreed at "
            + formatMoney(before->price) + "; ask for another extra.");
    }
    return {};
}

/// A backcharge that came off a bill stays as it is, as long as that bill counts.
Result<void> checkTakenOff(const Book& book, const Change& change) {
    const auto* before = rowIn<Backcharge>(change.before);
    if (!before || change.before == change.after)
        return {};
    for (const Bill& bill : billsOf(book, before->house)) {
        const bool taken = bill.counts()
            && std::ranges::find(bill.lines, before->id, &InvoiceLine::backcharge)
                != bill.lines.end();
        if (taken) {
            return badInput("The backcharge " + inQuotes(before->reason) + " came off invoice "
                + numberText(book, bill.invoice.number) + " and stays as it is.");
        }
    }
    return {};
}

/// The houses whose contract or extras the edit changes.
std::set<Id<House>> housesTouched(const Edit& edit) {
    std::set<Id<House>> ids;
    for (const Change& change : edit.changes) {
        for (const auto* row : {&change.before, &change.after}) {
            if (const auto* contract = rowIn<Contract>(*row))
                ids.insert(contract->house);
            if (const auto* extra = rowIn<Extra>(*row))
                ids.insert(extra->house);
        }
    }
    return ids;
}

Result<void> checkBilledStays(const std::vector<Bill>& bills, const House& house,
    const Contract* contract, const std::vector<Extra>& extras) {
    const auto schedule = scheduleOfValues(
        contract ? contract->values : std::vector<ContractValue>(), extras);
    for (const auto& [key, billed] : billedByLine(bills)) {
        const auto line = std::ranges::find(schedule, key, &ValueLine::key);
        if (billed == Money())
            continue;
        const std::string what = key.extra ? "an extra" : std::string(word(key.work));
        if (line == schedule.end()) {
            return badInput("On " + house.name + ", " + what
                + " has been billed and stays in "
                  "what was agreed; a credit note takes it back.");
        }
        if (std::abs(line->amount.cents()) < std::abs(billed.cents())) {
            return badInput("On " + house.name + ", " + formatMoney(billed)
                + " has been billed for " + what + "; the price cannot be less.");
        }
    }
    return {};
}

Result<void> checkAgreements(const Book& book, const Edit& edit) {
    const auto houses = housesTouched(edit);
    if (houses.empty())
        return {};
    const auto contracts = rowsAfter<Contract>(book, edit);
    const auto extras = rowsAfter<Extra>(book, edit);
    for (const Id<House> id : houses) {
        const House* house = book.house(id);
        if (!house) // new with this edit, or the store says so
            continue;
        if (std::ranges::count(contracts, id, &Contract::house) > 1)
            return badInput("There is a contract for " + house->name + " already.");
        const auto bills = billsOf(book, id);
        if (!bills.empty() && !book.isOpen(house->work))
            return badInput("The house " + house->name + " has to be opened first.");
        const auto contract = std::ranges::find(contracts, id, &Contract::house);
        std::vector<Extra> own = extras;
        std::erase_if(own, [&](const Extra& extra) { return extra.house != id; });
        auto stays = checkBilledStays(
            bills, *house, contract == contracts.end() ? nullptr : &*contract, own);
        if (!stays)
            return stays;
    }
    return {};
}

} // namespace

Result<void> checkMoney(const Book& book, const Edit& edit) {
    for (const Change& change : edit.changes) {
        if (auto price = checkAgreedPrice(change); !price)
            return price;
        if (auto taken = checkTakenOff(book, change); !taken)
            return taken;
    }
    if (auto payments = checkPayments(book, edit); !payments)
        return payments;
    return checkAgreements(book, edit);
}

} // namespace miterbook
