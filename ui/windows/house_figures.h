// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/hours.h"
#include "basics/money.h"
#include "desk/desk.h"

#include <QObject>

#include <deque>
#include <map>
#include <optional>

namespace miterbook {

/// Price and hours of one house as its list shows them.
struct HouseFigure {
    Money price;
    Hours hours;

    bool operator==(const HouseFigure&) const = default;
};

/// Prices and hours of houses, computed one after the other off the GUI thread, only for those that
/// are asked for, and forgotten when the book changes under them.
class HouseFigures final : public QObject {
    Q_OBJECT
public:
    explicit HouseFigures(Desk& desk, QObject* parent = nullptr);

    std::optional<HouseFigure> find(Id<Plan> work) const;
    /// These are on the screen: what is not known of them is computed, in this order.
    void want(const std::vector<Id<Plan>>& works);

Q_SIGNALS:
    void figured();

private:
    void forget(const Changes& changes);
    void next();
    void take(Id<Plan> work, int age, HouseFigure figure);

    Desk& m_desk;
    std::map<Id<Plan>, HouseFigure> m_known;
    std::deque<Id<Plan>> m_wanted;
    bool m_busy = false;
    int m_age = 0; ///< counts changes of the book: a figure begun before one is not taken
};

} // namespace miterbook
