// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "bill/aging.h"
#include "bill/journal_lines.h"

namespace miterbook {

/// How the shop numbers and follows up its bills. One row, id 1.
struct BillingSetup {
    Id<BillingSetup> id;
    std::string prefix;  ///< before the number of an invoice
    int firstNumber = 1; ///< of the first invoice; heeded while none has been issued
    AgeFrom ageFrom = AgeFrom::dueDate;
    int lateDays = 7;     ///< how late an invoice is before the statement says so
    std::string lateNote; ///< the shop's own words below a late notice
    int remindDays = 14;  ///< how long before its day a reminder is shown
    std::string receivable = LedgerAccounts().receivable; ///< what the ledger calls its accounts
    std::string retainage = LedgerAccounts().retainage;
    std::string income = LedgerAccounts().income;
    std::string tax = LedgerAccounts().tax;
    std::string deposits = LedgerAccounts().deposits;
    std::string backcharges = LedgerAccounts().backcharges;
    std::string bank = LedgerAccounts().bank;

    LedgerAccounts accounts() const {
        return {receivable, retainage, income, tax, deposits, backcharges, bank};
    }
    bool operator==(const BillingSetup&) const = default;
};

template <>
struct Describe<BillingSetup> {
    static constexpr std::string_view table = "billing_setup";
    static constexpr std::string_view noun = "billing setup";
    static constexpr void allFields(auto&& take) {
        take(field("id", &BillingSetup::id), field("prefix", &BillingSetup::prefix),
            field("first_number", &BillingSetup::firstNumber),
            field("age_from", &BillingSetup::ageFrom), field("late_days", &BillingSetup::lateDays),
            field("late_note", &BillingSetup::lateNote),
            field("remind_days", &BillingSetup::remindDays),
            field("receivable", &BillingSetup::receivable),
            field("retainage", &BillingSetup::retainage), field("income", &BillingSetup::income),
            field("tax", &BillingSetup::tax), field("deposits", &BillingSetup::deposits),
            field("backcharges", &BillingSetup::backcharges), field("bank", &BillingSetup::bank));
    }
};

} // namespace miterbook
