// SPDX-License-Identifier: GPL-3.0-or-later
#include "stages/bill/bill_desk.h"

#include "desk/desk.h"
#include "desk/figure_desk.h"
#include "papers/issue.h"

namespace miterbook {

BillDesk::BillDesk(Desk& desk, FigureDesk& figures, QObject* parent)
    : QObject(parent)
    , m_desk(desk)
    , m_figures(figures) {
    connect(&figures, &FigureDesk::figured, this, &BillDesk::reckon);
    connect(&desk, &Desk::changed, this, &BillDesk::reckon);
    reckon();
}

const Book& BillDesk::book() const {
    return m_desk.book();
}

const House* BillDesk::house() const {
    return book().house(m_figures.job().house);
}

const Contract* BillDesk::contract() const {
    const House* shown = house();
    return shown ? book().contract(shown->id) : nullptr;
}

Id<Builder> BillDesk::builder() const {
    if (const Contract* agreed = contract())
        return agreed->builder;
    const House* shown = house();
    const Plan* plan = shown ? book().plan(shown->work) : nullptr;
    const Builder* builder = plan ? book().builderOf(*plan) : nullptr;
    return builder ? builder->id : Id<Builder>();
}

HouseAccount BillDesk::account() const {
    return houseAccount(m_billing.schedule, m_billing.bills);
}

Date BillDesk::today() const {
    return m_desk.clock().today();
}

const Estimate& BillDesk::estimate() const {
    return m_figures.figures().estimate;
}

std::vector<ContractValue> BillDesk::bidValues() const {
    std::vector<ContractValue> values;
    if (const House* won = house()) {
        for (const WorkBid& sold : book().soldBid(won->work))
            values.push_back({sold.work, sold.price, {}});
    }
    if (!values.empty())
        return values;
    for (const WorkTotal& work : estimate().works)
        values.push_back({work.work, work.price, {}});
    return values;
}

bool BillDesk::perform(const Result<Edit>& edit) {
    if (edit)
        return m_desk.perform(*edit);
    m_desk.refuse(edit.error());
    return false;
}

bool BillDesk::issue(const Result<Bill>& bill) {
    if (bill)
        return perform(issueBill(book(), m_desk.ids(), *bill));
    m_desk.refuse(bill.error());
    return false;
}

void BillDesk::reckon() {
    m_billing = {};
    if (const House* shown = house()) {
        if (auto billing = billingOf(book(), shown->id))
            m_billing = *std::move(billing);
    }
    Q_EMIT reckoned();
}

} // namespace miterbook
