// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "desk/job_ref.h"

#include <QWidget>

class QLabel;

namespace miterbook {

class BidSetupForm;
class BothWaysTab;
class Desk;
class FigureDesk;
class FigureView;
class RiskPanel;
class SentTab;
class PriceSheetTab;
class WhatIfTab;

/// The bid: how it is priced on the left, what comes of it on the right.
class BidPage : public QWidget {
    Q_OBJECT
public:
    BidPage(Desk& desk, FigureDesk& figures, QWidget* parent = nullptr);

    void showJob(const JobRef& job);
    BothWaysTab& bothWays() const { return *m_bothWays; }
    WhatIfTab& whatIf() const { return *m_whatIf; }
    PriceSheetTab& sheet() const { return *m_sheet; }
    SentTab& sent() const { return *m_sent; }

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
    BothWaysTab* m_bothWays;
    SentTab* m_sent;
    PriceSheetTab* m_sheet;
    WhatIfTab* m_whatIf;
    FigureView* m_wins;
};

} // namespace miterbook
