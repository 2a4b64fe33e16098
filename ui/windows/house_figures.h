// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/hours.h"
#include "basics/money.h"
#include "desk/desk.h"
#include "hours/work_bid.h"

#include <QObject>

#include <deque>
#include <map>
#include <optional>

namespace miterbook {

/// What a house's hours are held against: its bid as it was won, or as it stands now.
struct HouseBid {
    std::vector<WorkBid> works;
    Money crewRate;
};

/// One house as its list shows it.
struct HouseFigure {
    Money price;
    Hours hours;    ///< bid
    Hours over;     ///< over the bid at completion; negative: under
    Percent done;   ///< by bid hours
    Money toProfit; ///< what that adds to the profit, or takes from it

    bool operator==(const HouseFigure&) const = default;
};

/// Prices and hours of houses. Bids that were won are in memory; those of other houses are computed
/// one after the other off the GUI thread, only where they are asked for, and forgotten when the
/// book changes under them.
class HouseFigures final : public QObject {
    Q_OBJECT
public:
    explicit HouseFigures(Desk& desk, QObject* parent = nullptr);

    std::optional<HouseFigure> find(const House& house);
    /// These are on the screen: what is not known of them is computed, in this order.
    void want(const std::vector<Id<Plan>>& works);

Q_SIGNALS:
    void figured();

private:
    void forget(const Changes& changes);
    void forgetShown(const AnyRow& row);
    std::optional<Id<Plan>> takeWanted();
    void next();
    void take(Id<Plan> work, int age, HouseBid bid);
    void readSold();

    Desk& m_desk;
    std::map<Id<Plan>, HouseBid> m_sold;  ///< bids that were won
    std::map<Id<Plan>, HouseBid> m_known; ///< bids as they stand now
    std::map<Id<House>, HouseFigure> m_shown;
    std::deque<Id<Plan>> m_wanted;
    bool m_busy = false;
    int m_age = 0; ///< counts changes of the book: a figure begun before one is not taken
};

} // namespace miterbook
