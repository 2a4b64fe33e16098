// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "bill/draw.h"
#include "bill/payment.h"
#include "job/book.h"

#include <map>

namespace miterbook {

// What the book holds of bills, as core/bill wants it.

/// Every bill of the shop, by id; without lines, which are read with each house.
std::vector<Bill> allBills(const Book& book);
/// A house's bills by number, with their lines where its plan is open.
std::vector<Bill> billsOf(const Book& book, Id<House> house);
/// A house's bill with its lines; nothing when there is none of that id.
std::optional<Bill> findBill(const Book& book, Id<Invoice> id);

std::vector<Extra> extrasOf(const Book& book, Id<House> house);
/// The lines that an extra was priced by; its house is open.
std::vector<ExtraLine> linesOf(const Book& book, const Extra& extra);
std::vector<Payment> allPayments(const Book& book);
std::vector<Allocation> allAllocations(const Book& book);

/// The house with its contract and bills, ready for a draw. Errors: not won yet, not opened.
Result<Billing> billingOf(const Book& book, Id<House> house);

/// The number of the next invoice or credit note.
Result<int> nextNumber(const Book& book);
/// How the shop writes the number of an invoice.
std::string numberText(const Book& book, int number);

/// A house's money by the heads of its bills alone, tax aside.
struct HouseMoney {
    Money value;  ///< contract and agreed extras
    Money earned; ///< by the contract's terms, of those
    Money work;   ///< billed of those, retainage included
    Money retained;
    Money owed; ///< open on its invoices, tax included

    Money unbilled() const { return earned - work; } ///< earned and on no bill yet
    bool operator==(const HouseMoney&) const = default;
};

/// Houses that were won or billed.
std::map<Id<House>, HouseMoney> moneyByHouse(const Book& book);

} // namespace miterbook
