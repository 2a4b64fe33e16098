// SPDX-License-Identifier: GPL-3.0-or-later
#include "job/bill_edits.h"

#include "basics/blank.h"
#include "basics/number_text.h"
#include "bill/extra_price.h"
#include "job/house_stage.h"

#include <algorithm>

namespace miterbook {

namespace {

const BillingTerms* termsOf(const Book& book, Id<Builder> builder) {
    for (const auto& [id, terms] : book.jobs.of<BillingTerms>()) {
        if (terms.builder == builder)
            return &terms;
    }
    return nullptr;
}

std::string builderName(const Book& book, Id<Builder> id) {
    const Builder* builder = book.prices.of<Builder>().find(id);
    return builder ? builder->name : std::string("the builder");
}

Result<void> priceByLines(const Book& book, Extra& extra, const std::vector<ExtraLine>& lines) {
    for (const ExtraLine& line : lines)
        extra.material += line.material;
    if (lines.empty() || extra.price != Money())
        return {};
    const auto price = priceExtra(lines, book.prices);
    if (!price)
        return price.error();
    extra.price = price->price;
    return {};
}

Reminder waiverFor(const Book& book, IdSource& ids, const Payment& payment) {
    Reminder reminder;
    reminder.id = ids.next<Reminder>();
    reminder.kind = ReminderKind::waiver;
    reminder.title = "Waiver for the payment of "
        + formatMoney(payment.amount, book.prices.shop().currency) + " by "
        + builderName(book, payment.builder);
    reminder.due = payment.date;
    reminder.builder = payment.builder;
    reminder.payment = payment.id;
    return reminder;
}

} // namespace

BillingTerms termsFor(const Book& book, Id<Builder> builder) {
    const BillingTerms* terms = termsOf(book, builder);
    if (!terms)
        terms = termsOf(book, {});
    BillingTerms found = terms ? *terms : BillingTerms();
    found.builder = builder;
    return found;
}

Contract contractFor(const Book& book, const House& house, std::vector<ContractValue> values) {
    const Plan* plan = book.plan(house.work);
    const Builder* builder = plan ? book.builderOf(*plan) : nullptr;
    const BillingTerms terms = termsFor(book, builder ? builder->id : Id<Builder>());
    Contract contract;
    contract.house = house.id;
    contract.builder = terms.builder;
    contract.drawBy = terms.drawBy;
    contract.retainage = terms.retainage;
    contract.tax = terms.tax;
    contract.dueDays = terms.dueDays;
    contract.stages = terms.stages;
    contract.values = std::move(values);
    return contract;
}

Edit agreeContract(const Book& book, IdSource& ids, const Contract& contract, Date today,
    const Estimate& estimate) {
    const House* house = book.house(contract.house);
    EditBuilder edit(book, "Agree the contract" + (house ? " for " + house->name : std::string()));
    edit.put(contract);
    if (house && house->stage == HouseStage::bidding) {
        House won = *house;
        won.stage = HouseStage::won;
        putHouseStage(edit, book, ids, won, today, &estimate);
    }
    return edit.take();
}

Edit keepTerms(const Book& book, IdSource& ids, const Contract& contract, bool waiver) {
    BillingTerms terms;
    if (const BillingTerms* held = termsOf(book, contract.builder))
        terms.id = held->id;
    else
        terms.id = ids.next<BillingTerms>();
    terms.builder = contract.builder;
    terms.drawBy = contract.drawBy;
    terms.retainage = contract.retainage;
    terms.tax = contract.tax;
    terms.dueDays = contract.dueDays;
    terms.waiver = waiver;
    terms.stages = contract.stages;
    for (ContractStage& stage : terms.stages)
        stage.reached = noDate;
    const std::string whose = contract.builder ? builderName(book, contract.builder)
                                               : std::string("all builders");
    return putEdit(book, "Keep the billing terms for " + whose, terms);
}

Result<Edit> addExtra(const Book& book, IdSource& ids, Extra extra, std::vector<ExtraLine> lines) {
    const House* house = book.house(extra.house);
    if (!house)
        return Error{Fault::notFound, "That house is not in the book any more."};
    if (auto priced = priceByLines(book, extra, lines); !priced)
        return priced.error();
    if (extra.state == ExtraState::asked && extra.price != Money())
        extra.state = ExtraState::priced;
    extra.id = ids.next<Extra>();
    EditBuilder edit(book, "Add the extra " + extra.title);
    edit.put(extra);
    for (ExtraLine& line : lines) {
        line.id = ids.next<ExtraLine>();
        line.extra = extra.id;
        line.plan = house->work;
        edit.put(line);
    }
    return edit.take();
}

Result<Edit> recordPayment(const Book& book, IdSource& ids, Payment payment) {
    if (payment.amount <= Money())
        return badInput("Say how much was paid.");
    payment.id = ids.next<Payment>();
    EditBuilder edit(book,
        "Record a payment of " + formatMoney(payment.amount) + " by "
            + builderName(book, payment.builder));
    edit.put(payment);
    const auto parts = allocateOldestFirst(payment, allBills(book), allAllocations(book), ids);
    for (const Allocation& part : parts)
        edit.put(part);
    if (termsFor(book, payment.builder).waiver)
        edit.put(waiverFor(book, ids, payment));
    return edit.take();
}

Edit removePayment(const Book& book, Id<Payment> id) {
    const Payment* payment = book.jobs.of<Payment>().find(id);
    EditBuilder edit(
        book, "Remove the payment of " + formatMoney(payment ? payment->amount : Money()));
    for (const auto& [partId, part] : book.jobs.of<Allocation>()) {
        if (part.payment == id)
            edit.remove(partId);
    }
    for (const auto& [reminderId, reminder] : book.jobs.of<Reminder>()) {
        if (reminder.payment == id)
            edit.remove(reminderId);
    }
    edit.remove(id);
    return edit.take();
}

Edit spreadRest(const Book& book, IdSource& ids, const Payment& payment) {
    EditBuilder edit(book, "Spread the rest of a payment over invoices");
    const auto parts = allocateOldestFirst(payment, allBills(book), allAllocations(book), ids);
    for (const Allocation& part : parts)
        edit.put(part);
    return edit.take();
}

Result<Edit> voidInvoice(
    const Book& book, IdSource& ids, Id<Invoice> id, Date date, const std::string& reason) {
    const auto bill = findBill(book, id);
    if (!bill)
        return Error{Fault::notFound, "That invoice is not in the book."};
    if (isBlank(reason))
        return badInput("Say why the invoice is voided.");
    const auto can = checkVoid(*bill, billsOf(book, bill->invoice.house), allAllocations(book));
    if (!can)
        return can.error();
    EditBuilder edit(book,
        "Void " + std::string(word(bill->invoice.kind)) + ' '
            + numberText(book, bill->invoice.number));
    edit.put(InvoiceVoid{ids.next<InvoiceVoid>(), id, date, reason});
    for (const InvoiceLine& line : bill->lines) {
        const Extra* extra = book.jobs.of<Extra>().find(line.extra);
        // A voided invoice gives its extras back, a voided credit note takes them again.
        const bool isCredit = bill->invoice.kind == InvoiceKind::credit;
        const auto moved = !extra ? Result<Extra>(badInput(""))
            : isCredit            ? billedExtra(*extra)
                                  : unbilledExtra(*extra);
        if (moved)
            edit.put(*moved);
    }
    return edit.take();
}

} // namespace miterbook
