// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "bill/aging.h"
#include "desk/desk.h"
#include "job/bills.h"

#include <QObject>

#include <optional>

namespace miterbook {

/// What one builder owes, by age.
struct AgingRow {
    AgingLine line;
    std::string builder;
    int late = 0; ///< invoices past due

    bool operator==(const AgingRow&) const = default;
};

/// One house's money: what could be billed today and what is owed.
struct ToBillRow {
    Id<House> house;
    std::string name;
    std::string builder;
    HouseMoney money;
    int notApproved = 0; ///< extras that nobody has said yes to

    bool operator==(const ToBillRow&) const = default;
};

/// Money over all houses, reckoned when it is asked for after money has changed: ten years of
/// invoices are not gone through at every key.
class MoneyDesk final : public QObject {
    Q_OBJECT
public:
    explicit MoneyDesk(Desk& desk, QObject* parent = nullptr);

    Desk& desk() const { return m_desk; }
    const std::vector<AgingRow>& aging();
    /// Houses won or billed; most to bill first.
    const std::vector<ToBillRow>& houses();
    HouseMoney of(Id<House> house);

private:
    void reckonHouses();

    Desk& m_desk;
    std::optional<std::vector<AgingRow>> m_aging; ///< nothing: to be reckoned, and so below
    std::optional<std::vector<ToBillRow>> m_houses;
    std::map<Id<House>, HouseMoney> m_money;
};

} // namespace miterbook
