// SPDX-License-Identifier: GPL-3.0-or-later
#include "bill/payment.h"

#include "basics/number_text.h"

#include <algorithm>
#include <map>
#include <tuple>

namespace miterbook {

std::vector<OpenBill> openBills(
    const std::vector<Bill>& bills, const std::vector<Allocation>& allocations) {
    std::map<Id<Invoice>, Money> credited;
    std::map<Id<Invoice>, Money> paid;
    for (const Bill& bill : bills) {
        if (bill.counts() && bill.invoice.credits)
            credited[bill.invoice.credits] += bill.total();
    }
    for (const Allocation& part : allocations)
        paid[part.invoice] += part.amount;
    std::vector<OpenBill> open;
    for (const Bill& bill : bills) {
        const Invoice& invoice = bill.invoice;
        if (!bill.counts() || invoice.credits)
            continue;
        const OpenBill each{invoice.id, invoice.number, invoice.builder, invoice.date, invoice.due,
            bill.total() + credited[invoice.id], paid[invoice.id]};
        if (each.open() != Money())
            open.push_back(each);
    }
    std::ranges::sort(open, {}, [](const OpenBill& b) { return std::tuple(b.date, b.number); });
    return open;
}

Money unallocated(const Payment& payment, const std::vector<Allocation>& allocations) {
    Money rest = payment.amount;
    for (const Allocation& part : allocations) {
        if (part.payment == payment.id)
            rest -= part.amount;
    }
    return rest;
}

std::vector<Allocation> allocateOldestFirst(const Payment& payment, const std::vector<Bill>& bills,
    const std::vector<Allocation>& allocations, IdSource& ids) {
    Money rest = unallocated(payment, allocations);
    std::vector<Allocation> made;
    for (const OpenBill& bill : openBills(bills, allocations)) {
        if (rest <= Money())
            break;
        if (bill.builder != payment.builder || bill.open() <= Money())
            continue;
        const Money part = std::min(rest, bill.open());
        made.push_back({ids.next<Allocation>(), payment.id, bill.invoice, part});
        rest -= part;
    }
    return made;
}

Result<void> checkAllocation(const Allocation& wanted, const Payment& payment,
    const std::vector<Bill>& bills, const std::vector<Allocation>& allocations) {
    if (wanted.amount <= Money())
        return badInput("Say how much of the payment goes to the invoice.");
    const Money rest = unallocated(payment, allocations);
    if (wanted.amount > rest)
        return badInput("Only " + formatMoney(rest) + " of the payment is left.");
    const auto open = openBills(bills, allocations);
    const auto bill = std::ranges::find(open, wanted.invoice, &OpenBill::invoice);
    if (bill == open.end() || bill->open() <= Money())
        return badInput("Nothing is open on that invoice.");
    if (bill->builder != payment.builder)
        return badInput("Invoice " + std::to_string(bill->number) + " is another builder's.");
    if (wanted.amount > bill->open()) {
        return badInput("Only " + formatMoney(bill->open()) + " is open on invoice "
            + std::to_string(bill->number) + "; the rest stays with the builder.");
    }
    return {};
}

} // namespace miterbook
