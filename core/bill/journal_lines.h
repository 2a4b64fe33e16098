// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "bill/payment.h"

namespace miterbook {

/// What the shop's ledger calls its accounts.
struct LedgerAccounts {
    std::string receivable = "Accounts receivable";
    std::string retainage = "Retainage receivable";
    std::string income = "Trim income";
    std::string tax = "Sales tax payable";
    std::string deposits = "Customer deposits";
    std::string backcharges = "Backcharges";
    std::string bank = "Money received";
};

/// One line of a double entry for any ledger; one of debit and credit is nothing.
struct JournalLine {
    Date date = noDate;
    std::string document; ///< `Invoice T-0042`; lines of one document and day add up to nothing
    std::string account;
    Money debit;
    Money credit;
    std::string memo;

    bool operator==(const JournalLine&) const = default;
};

/// The double entries of the papers and payments of the days from `from` to `to`, both included, by
/// day. A voided invoice is entered on its day and taken back on the day of the void.
std::vector<JournalLine> journalLines(const std::vector<Bill>& bills,
    const std::vector<Payment>& payments, Date from, Date to, const LedgerAccounts& accounts = {},
    const std::string& prefix = {});

} // namespace miterbook
