// SPDX-License-Identifier: GPL-3.0-or-later
#include "bill/statement.h"

#include "bill/account.h"

#include <algorithm>
#include <set>

namespace miterbook {

namespace {

/// Everything that moved the builder's balance up to a day, by day.
std::vector<StatementLine> movements(Id<Builder> builder, Date to, const std::vector<Bill>& bills,
    const std::vector<Payment>& payments, const std::string& prefix) {
    std::vector<StatementLine> lines;
    for (const Bill& bill : bills) {
        if (bill.invoice.builder != builder)
            continue;
        const std::string name = billName(bill.invoice, prefix);
        if (bill.invoice.date <= to)
            lines.push_back({bill.invoice.date, name, bill.total(), {}, {}});
        if (bill.voided && bill.voided->date <= to)
            lines.push_back({bill.voided->date, name + " voided", -bill.total(), {}, {}});
    }
    for (const Payment& payment : payments) {
        if (payment.builder == builder && payment.date <= to)
            lines.push_back({payment.date, "Payment " + payment.reference, {}, payment.amount, {}});
    }
    std::ranges::stable_sort(lines, {}, &StatementLine::date);
    return lines;
}

} // namespace

std::vector<Bill> billsOn(Id<Builder> builder, Date day, std::vector<Bill> bills) {
    std::erase_if(bills, [&](const Bill& bill) {
        return bill.invoice.builder != builder || bill.invoice.date > day;
    });
    for (Bill& bill : bills) {
        if (bill.voided && bill.voided->date > day)
            bill.voided.reset();
    }
    return bills;
}

std::vector<Allocation> paidBy(
    Date day, const std::vector<Payment>& payments, std::vector<Allocation> allocations) {
    std::set<Id<Payment>> there;
    for (const Payment& payment : payments) {
        if (payment.date <= day)
            there.insert(payment.id);
    }
    std::erase_if(
        allocations, [&](const Allocation& part) { return !there.contains(part.payment); });
    return allocations;
}

AccountStatement statementFor(Id<Builder> builder, Date from, Date to,
    const std::vector<Bill>& bills, const std::vector<Payment>& payments,
    const std::vector<Allocation>& allocations, AgeFrom ageFrom, const std::string& prefix) {
    AccountStatement statement{builder, from, to, {}, {}, {}, {}, {}};
    Money balance;
    for (StatementLine& line : movements(builder, to, bills, payments, prefix)) {
        balance += line.charge - line.payment;
        line.balance = balance;
        if (line.date < from)
            statement.opening = balance;
        else
            statement.lines.push_back(std::move(line));
    }
    statement.closing = balance;

    const std::vector<Bill> then = billsOn(builder, to, bills);
    std::vector<Payment> came = payments;
    std::erase_if(came, [&](const Payment& p) { return p.builder != builder || p.date > to; });
    const auto ages = aging(then, came, paidBy(to, came, allocations), to, ageFrom);
    statement.ages = ages.empty() ? AgingLine() : ages.front();
    statement.ages.builder = builder;
    statement.retained = retainedOf(then);
    return statement;
}

} // namespace miterbook
