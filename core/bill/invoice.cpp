// SPDX-License-Identifier: GPL-3.0-or-later
#include "bill/invoice.h"

#include "basics/quote.h"
#include "bill/invoice_number.h"

namespace miterbook {

std::string billName(const Invoice& invoice, const std::string& prefix) {
    return capitalised(word(invoice.kind)) + ' ' + invoiceNumberText(invoice.number, prefix);
}

void sumUp(Bill& bill) {
    bill.invoice.work = {};
    bill.invoice.backcharges = {};
    for (const InvoiceLine& line : bill.lines) {
        if (line.backcharge)
            bill.invoice.backcharges -= line.amount;
        else
            bill.invoice.work += line.amount;
    }
}

} // namespace miterbook
