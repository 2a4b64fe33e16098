// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

class QLabel;
class QPushButton;

namespace miterbook {

class Desk;
class FigureDesk;

/// Price, cost, hours and margin of the job in view, and whether a cheaper stick plan is still
/// being looked for.
class StatusLine final : public QWidget {
    Q_OBJECT
public:
    StatusLine(Desk& desk, FigureDesk& figures, QWidget* parent = nullptr);

    QString text() const;

private:
    void show();

    Desk& m_desk;
    FigureDesk& m_figures;
    QLabel* m_text;
    QLabel* m_search;
    QPushButton* m_stop;
};

} // namespace miterbook
