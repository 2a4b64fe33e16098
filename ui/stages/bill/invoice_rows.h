// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "bill/invoice.h"
#include "bill/payment.h"
#include "widgets/column.h"

#include <span>
#include <vector>

namespace miterbook {

class BillDesk;

/// One invoice or credit note with what came in for it.
struct BillRow {
    Bill bill;
    Money paid;
    Money credited; ///< taken back by credit notes; positive
    int daysLate = 0;

    Money open() const;
    bool operator==(const BillRow&) const = default;
};

/// One payment of the builder.
struct PaymentRow {
    Payment payment;
    Money rest; ///< pays nothing yet
    std::string pays;

    bool operator==(const PaymentRow&) const = default;
};

std::span<const Column<BillRow>> billColumns();
std::vector<BillRow> billRows(const BillDesk& bill);

std::span<const Column<PaymentRow>> paymentColumns();
std::vector<PaymentRow> paymentRows(const BillDesk& bill);

} // namespace miterbook
