// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/house_review.h"
#include "job/rate_review.h"

#include <QObject>

#include <optional>

namespace miterbook {

class Desk;
class FigureDesk;

/// What the Review page shows, reckoned when it is looked at and kept up with the book: results of
/// finished houses from memory; what they say of labour rates from the bids in the book file.
class ReviewDesk final : public QObject {
    Q_OBJECT
public:
    ReviewDesk(Desk& desk, FigureDesk& figures, QObject* parent = nullptr);

    Desk& desk() const { return m_desk; }
    const Book& book() const;
    /// The house on the screen; nullptr for a plan.
    const House* house() const;
    const std::vector<HouseResult>& results();
    const std::vector<TaskRate>& rates();
    bool accept(const TaskRate& rate);

Q_SIGNALS:
    void changed();

private:
    void forget();

    Desk& m_desk;
    FigureDesk& m_figures;
    std::optional<std::vector<HouseResult>> m_results;
    std::optional<std::vector<TaskSighting>> m_sightings;
    std::optional<std::vector<TaskRate>> m_rates;
};

} // namespace miterbook
