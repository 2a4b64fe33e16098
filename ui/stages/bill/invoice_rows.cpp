// SPDX-License-Identifier: GPL-3.0-or-later
#include "stages/bill/invoice_rows.h"

#include "papers/plain_text.h"
#include "stages/bill/bill_desk.h"
#include "widgets/columns.h"

#include <map>

namespace miterbook {

namespace {

/// How an invoice stands, in words.
QString standsAt(const BillRow& row, const Book&) {
    const auto say = [](const char* words) { return QCoreApplication::translate("Column", words); };
    if (row.bill.voided)
        return say(QT_TRANSLATE_NOOP("Column", "VOID: %1")).arg(text(row.bill.voided->reason));
    if (row.bill.invoice.kind == InvoiceKind::credit)
        return say(QT_TRANSLATE_NOOP("Column", "taken off its invoice"));
    if (row.open() < Money())
        return say(QT_TRANSLATE_NOOP("Column", "paid over"));
    if (row.open() == Money())
        return say(QT_TRANSLATE_NOOP("Column", "settled"));
    if (row.daysLate > 0)
        return say(QT_TRANSLATE_NOOP("Column", "LATE, %1 days")).arg(row.daysLate);
    return say(row.paid == Money() ? QT_TRANSLATE_NOOP("Column", "open")
                                   : QT_TRANSLATE_NOOP("Column", "part paid"));
}

template <Money (*Get)(const BillRow&)>
constexpr Column<BillRow> billMoney(const char* title) {
    return Column<BillRow>{.title = title,
        .kind = CellKind::money,
        .number = [](const BillRow& row) { return Get(row).cents(); },
        .write
        = [](std::int64_t cents, const Book&) { return text(formatMoney(Money::cents(cents))); },
        .summed = true};
}

Money askedFor(const BillRow& row) {
    return row.bill.counts() ? row.bill.total() : Money();
}

Money paidOn(const BillRow& row) {
    return row.paid;
}

Money openOn(const BillRow& row) {
    return row.open();
}

template <Date Invoice::*M>
constexpr Column<BillRow> billDate(const char* title) {
    return {.title = title,
        .read = [](const BillRow& row, const Book&) { return text(isoDate(row.bill.invoice.*M)); }};
}

constexpr Column<BillRow> billTable[] = {
    Column<BillRow>{.title = QT_TRANSLATE_NOOP("Column", "Number"),
        .read = [](const BillRow& row,
                    const Book& book) { return text(numberText(book, row.bill.invoice.number)); }},
    Column<BillRow>{.title = QT_TRANSLATE_NOOP("Column", "What"),
        .read = [](const BillRow& row, const Book&) { return text(word(row.bill.invoice.kind)); }},
    billDate<&Invoice::date>(QT_TRANSLATE_NOOP("Column", "Date")),
    billDate<&Invoice::due>(QT_TRANSLATE_NOOP("Column", "Due")),
    billMoney<askedFor>(QT_TRANSLATE_NOOP("Column", "Asked for")),
    billMoney<paidOn>(QT_TRANSLATE_NOOP("Column", "Paid")),
    billMoney<openOn>(QT_TRANSLATE_NOOP("Column", "Open")),
    Column<BillRow>{.title = QT_TRANSLATE_NOOP("Column", "Stands at"), .read = standsAt},
};

constexpr Column<PaymentRow> paymentTable[] = {
    Column<PaymentRow>{.title = QT_TRANSLATE_NOOP("Column", "Date"),
        .read = [](const PaymentRow& row, const Book&) { return text(isoDate(row.payment.date)); }},
    Column<PaymentRow>{.title = QT_TRANSLATE_NOOP("Column", "Reference"),
        .read = [](const PaymentRow& row, const Book&) { return text(row.payment.reference); }},
    Column<PaymentRow>{.title = QT_TRANSLATE_NOOP("Column", "Amount"),
        .kind = CellKind::money,
        .number = [](const PaymentRow& row) { return row.payment.amount.cents(); },
        .write
        = [](std::int64_t cents, const Book&) { return text(formatMoney(Money::cents(cents))); },
        .summed = true},
    Column<PaymentRow>{.title = QT_TRANSLATE_NOOP("Column", "Pays"),
        .read = [](const PaymentRow& row, const Book&) { return text(row.pays); }},
    moneyColumn<&PaymentRow::rest>(QT_TRANSLATE_NOOP("Column", "Pays nothing yet")).computed(),
};

} // namespace

Money BillRow::open() const {
    if (!bill.counts() || bill.invoice.kind == InvoiceKind::credit)
        return {};
    return bill.total() - credited - paid;
}

std::span<const Column<BillRow>> billColumns() {
    return billTable;
}

std::span<const Column<PaymentRow>> paymentColumns() {
    return paymentTable;
}

std::vector<BillRow> billRows(const BillDesk& desk) {
    std::map<Id<Invoice>, Money> paid;
    for (const Allocation& part : allAllocations(desk.book()))
        paid[part.invoice] += part.amount;
    std::map<Id<Invoice>, Money> credited;
    for (const Bill& bill : desk.billing().bills) {
        if (bill.counts() && bill.invoice.credits)
            credited[bill.invoice.credits] -= bill.total();
    }
    std::vector<BillRow> rows;
    for (const Bill& bill : desk.billing().bills) {
        BillRow row{bill, paid[bill.invoice.id], credited[bill.invoice.id], 0};
        row.daysLate = static_cast<int>(
            (std::chrono::sys_days(desk.today()) - std::chrono::sys_days(bill.invoice.due))
                .count());
        rows.push_back(std::move(row));
    }
    return rows;
}

std::vector<PaymentRow> paymentRows(const BillDesk& desk) {
    std::vector<PaymentRow> rows;
    const auto parts = allAllocations(desk.book());
    for (const auto& [id, payment] : desk.book().jobs.of<Payment>()) {
        if (payment.builder != desk.builder())
            continue;
        std::vector<std::string> pays;
        for (const Allocation& part : parts) {
            const Invoice* invoice = desk.book().jobs.of<Invoice>().find(part.invoice);
            if (part.payment == id && invoice) {
                pays.push_back(
                    numberText(desk.book(), invoice->number) + ": " + formatMoney(part.amount));
            }
        }
        rows.push_back({payment, unallocated(payment, parts), joined(pays)});
    }
    return rows;
}

} // namespace miterbook
