// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "desk/job_ref.h"

#include <QWidget>

class QLabel;

namespace miterbook {

class BidSetupForm;
class Desk;
class FigureDesk;
class FigureView;
class RiskPanel;

/// The bid: how it is priced on the left, what comes of it on the right.
class BidPage : public QWidget {
    Q_OBJECT
public:
    BidPage(Desk& desk, FigureDesk& figures, QWidget* parent = nullptr);

    void showJob(const JobRef& job);

private:
    QWidget* summary();
    QWidget* tables();
    void refresh();
    void refreshSummary();

    Desk& m_desk;
    FigureDesk& m_figures;
    BidSetupForm* m_form;
    QLabel* m_price;
    QLabel* m_ratios;
    QLabel* m_problems;
    QLabel* m_notes;
    FigureView* m_works;
    FigureView* m_lines;
    RiskPanel* m_risk;
};

} // namespace miterbook
