// SPDX-License-Identifier: GPL-3.0-or-later
#include "bill/invoice.h"

namespace miterbook {

Money Bill::work() const {
    Money sum;
    for (const InvoiceLine& line : lines) {
        if (!line.backcharge)
            sum += line.amount;
    }
    return sum;
}

Money Bill::backcharges() const {
    Money sum;
    for (const InvoiceLine& line : lines) {
        if (line.backcharge)
            sum -= line.amount;
    }
    return sum;
}

Money Bill::total() const {
    return work() - invoice.retained + invoice.deposit - backcharges() + invoice.tax;
}

} // namespace miterbook
