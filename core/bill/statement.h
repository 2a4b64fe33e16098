// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "bill/aging.h"

namespace miterbook {

/// One line of a statement: a paper issued, voided, or money that came in.
struct StatementLine {
    Date date = noDate;
    std::string text; ///< `Invoice 42`, `Payment 1077`
    Money charge;     ///< negative for a credit note and a void
    Money payment;
    Money balance; ///< owed after it

    bool operator==(const StatementLine&) const = default;
};

/// (Not "Statement": the store has one of SQL.) What a builder owed, what came and went over some
/// days, and what is owed now.
struct AccountStatement {
    Id<Builder> builder;
    Date from = noDate;
    Date to = noDate;
    Money opening;
    std::vector<StatementLine> lines; ///< by day; on a day charges before payments
    Money closing;
    AgingLine ages; ///< on the last day
    Money retained; ///< held back, not owed yet

    bool operator==(const AccountStatement&) const = default;
};

/// The builder's bills as they stood on a day: later ones are left out, later voids undone.
std::vector<Bill> billsOn(Id<Builder> builder, Date day, std::vector<Bill> bills);

/// What had been paid on bills by that day.
std::vector<Allocation> paidBy(
    Date day, const std::vector<Payment>& payments, std::vector<Allocation> allocations);

/// The statement over the days from `from` to `to`, both included, as it stood on the last: later
/// papers, payments and voids are as if they had not been. `prefix` stands before numbers.
AccountStatement statementFor(Id<Builder> builder, Date from, Date to,
    const std::vector<Bill>& bills, const std::vector<Payment>& payments,
    const std::vector<Allocation>& allocations, AgeFrom ageFrom, const std::string& prefix = {});

} // namespace miterbook
