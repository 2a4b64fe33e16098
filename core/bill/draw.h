// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/result.h"
#include "bill/account.h"
#include "bill/payment_request.h"

#include <string>

namespace miterbook {

/// A house to be billed: what was agreed, and what has been issued on it.
struct Billing {
    Contract contract;
    std::string lot;
    std::vector<ValueLine> schedule;
    std::vector<Bill> bills;
};

/// What the next draw shall take in.
struct DrawAsk {
    Date date = noDate;
    std::vector<ValueProgress> progress;
    std::vector<Backcharge> backcharges; ///< accepted ones, to come off
    Money deposit;                       ///< to be used up; not more than is held
};

// All of these make a Bill without number and ids, ready to be issued. Error: one sentence.

/// A draw: each line's share to date less what was billed on it; retainage and tax on the work of
/// this draw, rounded once each. Refuses a share over 100 %, a share below what has been billed
/// (a credit note takes back), a draw of nothing, more deposit than is held, and deductions that
/// are more than the draw.
Result<Bill> makeDraw(const Billing& billing, const DrawAsk& ask);

/// Money asked for ahead of the work; draws use it up. No tax: that goes with the work.
Result<Bill> makeDeposit(const Billing& billing, Date date, Money amount);

/// Gives retainage back for payment. Not more than is held.
Result<Bill> makeRelease(const Billing& billing, Date date, Money amount);

/// The arithmetic of a bill's payment as a form shows it: what came before, and this bill. Its
/// due() is the bill's total before tax and deposits.
PaymentRequest paymentRequest(const std::vector<Bill>& before, const Bill& bill);

/// Gives a bill its number and its rows their ids.
Bill numbered(Bill bill, int number, IdSource& ids);

} // namespace miterbook
