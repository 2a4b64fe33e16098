// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/money.h"

namespace miterbook {

/// What a payment under a contract with retainage is reckoned from. Letters are those of block 14
/// of USACE ENG Form 93, "Payment Estimate - Contract Performance".
struct PaymentRequest {
    Money earned;             ///< to date
    Money previousDeductions; ///< A
    Money previousRetained;   ///< B
    Money previousPayments;   ///< C
    Money retained;           ///< F, held back now
    Money deductions;         ///< G, other deductions now
    Money retainedRefunded;   ///< I, retainage given back now
    Money deductionsRefunded; ///< J

    Money previousEarnings() const { // D
        return previousDeductions + previousRetained + previousPayments;
    }
    Money earnedNow() const { return earned - previousEarnings(); }          // E
    Money heldBack() const { return retained + deductions; }                 // H
    Money refunded() const { return retainedRefunded + deductionsRefunded; } // K
    Money due() const { return earnedNow() - heldBack() + refunded(); }      // L
    Money totalRetained() const { return previousRetained + retained - retainedRefunded; }
    Money totalDeductions() const { return previousDeductions + deductions - deductionsRefunded; }
    Money totalPaid() const { return previousPayments + due(); }
};

} // namespace miterbook
