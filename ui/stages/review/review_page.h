// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

class QTabWidget;

namespace miterbook {

class CompareTab;
class Desk;
class FigureDesk;
class HouseTab;
class LossesTab;
class RatesTab;
class ReviewDesk;

/// What made money: the house on the screen, all houses compared, and what they teach.
class ReviewPage final : public QWidget {
    Q_OBJECT
public:
    ReviewPage(Desk& desk, FigureDesk& figures, QWidget* parent = nullptr);

    ReviewDesk& review() const { return *m_review; }
    HouseTab& house() const { return *m_house; }
    CompareTab& compare() const { return *m_compare; }
    LossesTab& losses() const { return *m_losses; }
    RatesTab& rates() const { return *m_rates; }
    QTabWidget& tabs() const { return *m_tabs; }
    QString nextStep() const;

private:
    ReviewDesk* m_review;
    HouseTab* m_house;
    CompareTab* m_compare;
    LossesTab* m_losses;
    RatesTab* m_rates;
    QTabWidget* m_tabs;
};

} // namespace miterbook
