// SPDX-License-Identifier: GPL-3.0-or-later
#include "bill/aging.h"

#include <algorithm>
#include <map>
#include <tuple>

namespace miterbook {

namespace {

int daysBetween(Date from, Date to) {
    return static_cast<int>((std::chrono::sys_days(to) - std::chrono::sys_days(from)).count());
}

} // namespace

std::size_t agingBucket(int days) {
    if (days <= 30)
        return 0;
    if (days <= 60)
        return 1;
    return days <= 90 ? 2 : 3;
}

Money AgingLine::owed() const {
    Money sum = -credit;
    for (const Money bucket : buckets)
        sum += bucket;
    return sum;
}

std::vector<AgingLine> aging(const std::vector<Bill>& bills, const std::vector<Payment>& payments,
    const std::vector<Allocation>& allocations, Date today, AgeFrom from) {
    std::map<Id<Builder>, AgingLine> byBuilder;
    for (const OpenBill& bill : openBills(bills, allocations)) {
        AgingLine& line = byBuilder[bill.builder];
        if (bill.open() < Money()) {
            line.credit -= bill.open();
            continue;
        }
        const Date since = from == AgeFrom::dueDate ? bill.due : bill.date;
        line.buckets.at(agingBucket(daysBetween(since, today))) += bill.open();
    }
    for (const Payment& payment : payments) {
        const Money rest = unallocated(payment, allocations);
        if (rest != Money())
            byBuilder[payment.builder].credit += rest;
    }
    std::vector<AgingLine> lines;
    for (auto& [builder, line] : byBuilder) {
        line.builder = builder;
        lines.push_back(line);
    }
    return lines;
}

AgingLine agingTotal(const std::vector<AgingLine>& lines) {
    AgingLine total;
    for (const AgingLine& line : lines) {
        for (std::size_t i = 0; i < agingBuckets; ++i)
            total.buckets.at(i) += line.buckets.at(i);
        total.credit += line.credit;
    }
    return total;
}

std::vector<LateBill> lateBills(const std::vector<Bill>& bills,
    const std::vector<Allocation>& allocations, Date today, int atLeast) {
    std::vector<LateBill> late;
    for (const OpenBill& bill : openBills(bills, allocations)) {
        const int days = daysBetween(bill.due, today);
        if (bill.open() > Money() && days >= atLeast)
            late.push_back({bill, days});
    }
    std::ranges::sort(
        late, {}, [](const LateBill& l) { return std::tuple(-l.daysLate, l.bill.number); });
    return late;
}

} // namespace miterbook
