// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "bill/draw.h"

namespace miterbook {

inline constexpr Id<House> lot7{70};
inline constexpr Id<Builder> oakRidge{5};
inline constexpr Id<Builder> hillside{6};

/// A day of March 2026 and after: 1 is 2026-03-01.
inline Date day(int number) {
    using namespace std::chrono;
    return addDays(Date{year(2026), March, std::chrono::day(1)}, number - 1);
}

inline ValueLine valueLine(PieceOfWork work, Money amount) {
    return {{work, {}}, std::string(word(work)), amount};
}

/// Doors 4,000, windows 3,500, base 2,500: 10,000 in all, 10 % retained, no tax, 30 days.
inline Billing tenThousand() {
    Billing billing;
    billing.contract.house = lot7;
    billing.contract.builder = oakRidge;
    billing.contract.purchaseOrder = "PO 881";
    billing.contract.retainage = Percent::whole(10);
    billing.lot = "7";
    billing.schedule = {valueLine(PieceOfWork::doors, Money::dollars(4000)),
        valueLine(PieceOfWork::windows, Money::dollars(3500)),
        valueLine(PieceOfWork::base, Money::dollars(2500))};
    return billing;
}

inline ValueProgress toDate(PieceOfWork work, int percent) {
    return {{work, {}}, Percent::whole(percent)};
}

/// Numbers a bill behind those that are there and puts it with them.
inline const Bill& issue(Billing& billing, const Result<Bill>& bill) {
    static IdSource ids(10'000);
    billing.bills.push_back(numbered(*bill, static_cast<int>(billing.bills.size()) + 1, ids));
    return billing.bills.back();
}

/// A bill of one builder by itself, for what comes after the issuing.
inline Bill plainBill(int number, Id<Builder> builder, int onDay, Money amount) {
    Bill bill;
    bill.invoice.id = Id<Invoice>(1000 + number);
    bill.invoice.number = number;
    bill.invoice.house = lot7;
    bill.invoice.builder = builder;
    bill.invoice.date = day(onDay);
    bill.invoice.due = day(onDay + 30);
    InvoiceLine line;
    line.id = Id<InvoiceLine>(2000 + number);
    line.invoice = bill.invoice.id;
    line.amount = amount;
    bill.lines = {line};
    sumUp(bill);
    return bill;
}

} // namespace miterbook
