// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

class QLabel;
class QProgressBar;
class QPushButton;

namespace miterbook {

class Desk;
class FigureDesk;
class FigureView;
class WhatIfPanel;

/// The order: what to buy, how each stick is cut, how good that plan is, and what would change it.
class OrderPage : public QWidget {
    Q_OBJECT
public:
    OrderPage(Desk& desk, FigureDesk& figures, QWidget* parent = nullptr);

private:
    void buildLabels();
    void buildSearch();
    void layOut();
    void refresh();
    void showSearch();

    Desk& m_desk;
    FigureDesk& m_figures;
    QLabel* m_summary;
    QLabel* m_problems;
    QProgressBar* m_progress;
    QPushButton* m_search; ///< stops the search, or looks on
    FigureView* m_buy;
    FigureView* m_patterns;
    WhatIfPanel* m_whatIf;
};

} // namespace miterbook
