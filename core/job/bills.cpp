// SPDX-License-Identifier: GPL-3.0-or-later
#include "job/bills.h"

#include "bill/invoice_number.h"

#include <algorithm>

namespace miterbook {

namespace {

std::map<Id<Invoice>, InvoiceVoid> voids(const Book& book) {
    std::map<Id<Invoice>, InvoiceVoid> byInvoice;
    for (const auto& [id, voided] : book.jobs.of<InvoiceVoid>())
        byInvoice.emplace(voided.invoice, voided);
    return byInvoice;
}

Bill headOf(const Invoice& invoice, const std::map<Id<Invoice>, InvoiceVoid>& voided) {
    Bill bill;
    bill.invoice = invoice;
    if (const auto found = voided.find(invoice.id); found != voided.end())
        bill.voided = found->second;
    return bill;
}

template <class Row>
std::vector<Row> rowsOf(const Table<Row>& table) {
    std::vector<Row> rows;
    rows.reserve(table.size());
    for (const auto& [id, row] : table)
        rows.push_back(row);
    return rows;
}

const SheetRows& sheetOf(const Book& book, Id<House> id) {
    const House* house = book.house(id);
    return book.sheet(house ? house->work : Id<Plan>());
}

} // namespace

std::vector<Bill> allBills(const Book& book) {
    const auto voided = voids(book);
    std::vector<Bill> bills;
    bills.reserve(book.jobs.of<Invoice>().size());
    for (const auto& [id, invoice] : book.jobs.of<Invoice>())
        bills.push_back(headOf(invoice, voided));
    return bills;
}

std::vector<Bill> billsOf(const Book& book, Id<House> house) {
    const auto voided = voids(book);
    std::vector<Bill> bills;
    for (const auto& [id, invoice] : book.jobs.of<Invoice>()) {
        if (invoice.house == house)
            bills.push_back(headOf(invoice, voided));
    }
    std::ranges::sort(bills, {}, [](const Bill& bill) { return bill.invoice.number; });
    for (const auto& [id, line] : sheetOf(book, house).of<InvoiceLine>()) {
        const auto bill = std::ranges::find(
            bills, line.invoice, [](const Bill& each) { return each.invoice.id; });
        if (bill != bills.end())
            bill->lines.push_back(line);
    }
    return bills;
}

std::optional<Bill> findBill(const Book& book, Id<Invoice> id) {
    const Invoice* invoice = book.jobs.of<Invoice>().find(id);
    if (!invoice)
        return std::nullopt;
    for (Bill& bill : billsOf(book, invoice->house)) {
        if (bill.invoice.id == id)
            return std::move(bill);
    }
    return std::nullopt;
}

std::vector<Extra> extrasOf(const Book& book, Id<House> house) {
    std::vector<Extra> extras;
    for (const auto& [id, extra] : book.jobs.of<Extra>()) {
        if (extra.house == house)
            extras.push_back(extra);
    }
    return extras;
}

std::vector<ExtraLine> linesOf(const Book& book, const Extra& extra) {
    std::vector<ExtraLine> lines;
    for (const auto& [id, line] : sheetOf(book, extra.house).of<ExtraLine>()) {
        if (line.extra == extra.id)
            lines.push_back(line);
    }
    return lines;
}

std::vector<Payment> allPayments(const Book& book) {
    return rowsOf(book.jobs.of<Payment>());
}

std::vector<Allocation> allAllocations(const Book& book) {
    return rowsOf(book.jobs.of<Allocation>());
}

Result<Billing> billingOf(const Book& book, Id<House> id) {
    const House* house = book.house(id);
    const Contract* contract = book.contract(id);
    if (!house)
        return Error{Fault::notFound, "That house is not in the book any more."};
    if (!contract) {
        return badInput(
            "Nothing has been agreed on " + house->name + " yet: enter the contract first.");
    }
    if (!book.isOpen(house->work))
        return badInput("The house " + house->name + " has to be opened first.");
    return Billing{*contract, house->lot, scheduleOfValues(contract->values, extrasOf(book, id)),
        billsOf(book, id)};
}

Result<int> nextNumber(const Book& book) {
    std::vector<int> issued;
    for (const auto& [id, invoice] : book.jobs.of<Invoice>())
        issued.push_back(invoice.number);
    return nextInvoiceNumber(std::move(issued), book.billing().firstNumber);
}

std::string numberText(const Book& book, int number) {
    return invoiceNumberText(number, book.billing().prefix);
}

std::map<Id<House>, HouseMoney> moneyByHouse(const Book& book) {
    std::map<Id<House>, std::vector<Extra>> extras;
    for (const auto& [id, extra] : book.jobs.of<Extra>())
        extras[extra.house].push_back(extra);
    std::map<Id<House>, HouseMoney> money;
    for (const auto& [id, contract] : book.jobs.of<Contract>()) {
        const std::vector<Extra>& own = extras[contract.house];
        const auto schedule = scheduleOfValues(contract.values, own);
        HouseMoney& house = money[contract.house];
        house.value = valueOf(schedule);
        house.earned = earnedToDate(schedule, progressOf(contract, schedule, own));
    }
    const std::vector<Bill> bills = allBills(book);
    std::map<Id<Invoice>, Id<House>> houseOf;
    for (const Bill& bill : bills) {
        houseOf[bill.invoice.id] = bill.invoice.house;
        if (!bill.counts())
            continue;
        HouseMoney& house = money[bill.invoice.house];
        house.work += bill.work();
        house.retained += bill.invoice.retained;
    }
    for (const OpenBill& bill : openBills(bills, allAllocations(book)))
        money[houseOf[bill.invoice]].owed += bill.open();
    return money;
}

} // namespace miterbook
