// SPDX-License-Identifier: GPL-3.0-or-later
#include "bill/account.h"

#include <algorithm>

namespace miterbook {

namespace {

Money billedOn(const std::map<ValueKey, Money>& billed, const ValueKey& key) {
    const auto found = billed.find(key);
    return found == billed.end() ? Money() : found->second;
}

} // namespace

std::map<ValueKey, Money> billedByLine(const std::vector<Bill>& bills) {
    std::map<ValueKey, Money> billed;
    for (const Bill& bill : bills) {
        if (!bill.counts())
            continue;
        for (const InvoiceLine& line : bill.lines) {
            if (!line.backcharge)
                billed[line.key()] += line.amount;
        }
    }
    return billed;
}

Money retainedOf(const std::vector<Bill>& bills) {
    Money sum;
    for (const Bill& bill : bills)
        sum += bill.counts() ? bill.invoice.retained : Money();
    return sum;
}

Money depositOf(const std::vector<Bill>& bills) {
    Money sum;
    for (const Bill& bill : bills)
        sum += bill.counts() ? bill.invoice.deposit : Money();
    return sum;
}

HouseAccount houseAccount(const std::vector<ValueLine>& schedule, const std::vector<Bill>& bills) {
    HouseAccount account;
    for (const Bill& bill : bills) {
        if (!bill.counts())
            continue;
        const Money backcharges = bill.backcharges();
        account.billed += bill.total() - bill.invoice.tax - bill.invoice.deposit + backcharges;
        account.backcharged += backcharges;
        account.tax += bill.invoice.tax;
    }
    account.retained = retainedOf(bills);
    account.deposit = depositOf(bills);
    const auto billed = billedByLine(bills);
    for (const ValueLine& line : schedule) {
        (line.key.extra ? account.extras : account.contract) += line.amount;
        account.unbilled += line.amount - billedOn(billed, line.key);
    }
    return account;
}

std::vector<UnbilledWork> unbilledWork(const std::vector<ValueLine>& schedule,
    const std::vector<Bill>& bills, const std::vector<ValueProgress>& progress) {
    const auto billed = billedByLine(bills);
    std::vector<UnbilledWork> works;
    for (const ValueProgress& each : progress) {
        const auto line = std::ranges::find(schedule, each.key, &ValueLine::key);
        if (line == schedule.end())
            continue;
        const UnbilledWork work{
            line->key, line->label, share(line->amount, each.toDate), billedOn(billed, line->key)};
        const bool open = line->amount < Money() ? work.amount() < Money()
                                                 : work.amount() > Money();
        if (open)
            works.push_back(work);
    }
    const auto place = [&](const UnbilledWork& work) {
        return std::ranges::find(schedule, work.key, &ValueLine::key) - schedule.begin();
    };
    std::ranges::stable_sort(works, {}, place);
    return works;
}

} // namespace miterbook
