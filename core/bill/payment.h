// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/result.h"
#include "bill/invoice.h"

#include <vector>

namespace miterbook {

/// Money that came in from a builder.
struct Payment {
    Id<Payment> id;
    Id<Builder> builder;
    Date date = noDate;
    Money amount;
    std::string reference; ///< number of the check or the transfer

    bool operator==(const Payment&) const = default;
};

template <>
struct Describe<Payment> {
    static constexpr std::string_view table = "payment";
    static constexpr std::string_view noun = "payment";
    static constexpr void allFields(auto&& take) {
        take(field("id", &Payment::id), field("builder", &Payment::builder),
            field("date", &Payment::date), field("amount", &Payment::amount),
            field("reference", &Payment::reference));
    }
};

/// The part of a payment that pays an invoice.
struct Allocation {
    Id<Allocation> id;
    Id<Payment> payment;
    Id<Invoice> invoice;
    Money amount;

    bool operator==(const Allocation&) const = default;
};

template <>
struct Describe<Allocation> {
    static constexpr std::string_view table = "allocation";
    static constexpr std::string_view noun = "part of a payment";
    static constexpr void allFields(auto&& take) {
        take(field("id", &Allocation::id), field("payment", &Allocation::payment),
            field("invoice", &Allocation::invoice), field("amount", &Allocation::amount));
    }
};

/// An invoice that still asks for money (or, negative, was paid or credited beyond what it asks).
struct OpenBill {
    Id<Invoice> invoice;
    int number = 0;
    Id<Builder> builder;
    Date date = noDate;
    Date due = noDate;
    Money total; ///< with credit notes on it
    Money paid;

    Money open() const { return total - paid; }
    bool operator==(const OpenBill&) const = default;
};

/// The invoices with something open, oldest first. Credit notes come off the invoice they take
/// back; voided ones are left out.
std::vector<OpenBill> openBills(
    const std::vector<Bill>& bills, const std::vector<Allocation>& allocations);

/// What of a payment pays no invoice yet: part of an overpayment, or money ahead.
Money unallocated(const Payment& payment, const std::vector<Allocation>& allocations);

/// Spreads what is left of a payment over the builder's open invoices, oldest first; a rest stays
/// unallocated.
std::vector<Allocation> allocateOldestFirst(const Payment& payment, const std::vector<Bill>& bills,
    const std::vector<Allocation>& allocations, IdSource& ids);

/// Whether a payment can pay an invoice by so much: of the same builder, not more than is left of
/// it and open on the invoice. Error: one sentence.
Result<void> checkAllocation(const Allocation& wanted, const Payment& payment,
    const std::vector<Bill>& bills, const std::vector<Allocation>& allocations);

} // namespace miterbook
