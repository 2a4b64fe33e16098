// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

class QLabel;

namespace miterbook {

class Desk;
class FigureDesk;
class FigureView;

/// The order: what to buy, how each stick is cut, and how good that plan is.
class OrderPage : public QWidget {
    Q_OBJECT
public:
    OrderPage(Desk& desk, FigureDesk& figures, QWidget* parent = nullptr);

private:
    void refresh();

    Desk& m_desk;
    FigureDesk& m_figures;
    QLabel* m_summary;
    QLabel* m_problems;
    FigureView* m_buy;
    FigureView* m_patterns;
};

} // namespace miterbook
