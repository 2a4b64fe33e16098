// SPDX-License-Identifier: GPL-3.0-or-later
#include "windows/money_desk.h"

#include <algorithm>
#include <functional>

namespace miterbook {

namespace {

bool touchesMoney(const Changes& changes) {
    return touches<Contract, Extra, Backcharge, Invoice, InvoiceVoid, Payment, Allocation, House,
        Builder, BillingSetup>(changes);
}

std::string builderName(const Book& book, Id<Builder> id) {
    const Builder* builder = book.prices.of<Builder>().find(id);
    return builder ? builder->name : std::string();
}

std::vector<AgingRow> agingRows(const Book& book, Date today) {
    const auto bills = allBills(book);
    const auto parts = allAllocations(book);
    std::map<Id<Builder>, int> late;
    for (const LateBill& each : lateBills(bills, parts, today))
        ++late[each.bill.builder];
    std::vector<AgingRow> rows;
    for (const AgingLine& line :
        aging(bills, allPayments(book), parts, today, book.billing().ageFrom))
        rows.push_back({line, builderName(book, line.builder), late[line.builder]});
    return rows;
}

} // namespace

MoneyDesk::MoneyDesk(Desk& desk, QObject* parent)
    : QObject(parent)
    , m_desk(desk) {
    connect(&desk, &Desk::changed, this, [this](const Changes& changes) {
        if (!touchesMoney(changes))
            return;
        m_aging.reset();
        m_houses.reset();
    });
}

const std::vector<AgingRow>& MoneyDesk::aging() {
    if (!m_aging)
        m_aging = agingRows(m_desk.book(), m_desk.clock().today());
    return *m_aging;
}

const std::vector<ToBillRow>& MoneyDesk::houses() {
    reckonHouses();
    return *m_houses;
}

HouseMoney MoneyDesk::of(Id<House> house) {
    reckonHouses();
    const auto found = m_money.find(house);
    return found == m_money.end() ? HouseMoney() : found->second;
}

void MoneyDesk::reckonHouses() {
    if (m_houses)
        return;
    const Book& book = m_desk.book();
    m_money = moneyByHouse(book);
    std::map<Id<House>, int> notApproved;
    for (const auto& [id, extra] : book.jobs.of<Extra>())
        notApproved[extra.house] += lacksApproval(extra) ? 1 : 0;
    m_houses.emplace();
    for (const auto& [id, money] : m_money) {
        const House* house = book.house(id);
        const Plan* plan = house ? book.plan(house->work) : nullptr;
        const Builder* builder = plan ? book.builderOf(*plan) : nullptr;
        m_houses->push_back({id, house ? house->name : std::string(),
            builder ? builder->name : std::string(), money, notApproved[id]});
    }
    std::ranges::stable_sort(*m_houses, std::ranges::greater(),
        [](const ToBillRow& row) { return row.money.unbilled(); });
}

} // namespace miterbook
