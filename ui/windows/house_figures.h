// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/hours.h"
#include "basics/money.h"
#include "desk/desk.h"
#include "job/house_forecast.h"

#include <QObject>

#include <deque>
#include <map>
#include <optional>

namespace miterbook {

/// One house as its list shows it.
struct HouseFigure {
    Money price;
    Hours hours;    ///< bid
    Hours over;     ///< over the bid at completion; negative: under
    Percent done;   ///< by bid hours
    Money toProfit; ///< what that adds to the profit, or takes from it

    bool operator==(const HouseFigure&) const = default;
};

/// Prices and hours of houses, by the one forecast. Bids that were won are in memory; those of
/// other houses, and what is hung of houses that are underway, are computed one after the other off
/// the GUI thread, only where they are asked for, and forgotten when the book changes under them.
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
    /// What is not in memory of a house.
    struct Reckoned {
        HouseBid bid; ///< as it stands now
        std::vector<DoneSaid> hung;
    };

    bool isWorthReading(Id<Plan> work) const;
    void forget(const Changes& changes);
    void forgetShown(const AnyRow& row);
    std::optional<Id<Plan>> takeWanted();
    void next();
    void take(Id<Plan> work, int age, Reckoned reckoned);
    void readSold();

    Desk& m_desk;
    std::map<Id<Plan>, HouseBid> m_sold; ///< bids that were won
    std::map<Id<Plan>, Reckoned> m_known;
    std::map<Id<House>, HouseFigure> m_shown;
    std::deque<Id<Plan>> m_wanted;
    bool m_busy = false;
    int m_age = 0; ///< counts changes of the book: a figure begun before one is not taken
};

} // namespace miterbook
