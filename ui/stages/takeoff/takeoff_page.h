// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

class QTabWidget;

namespace miterbook {

class Desk;
class FigureDesk;
class FigureView;

/// Totals, quantities by room, pieces, and what to look at, as four tables.
class TakeoffPage : public QWidget {
    Q_OBJECT
public:
    TakeoffPage(Desk& desk, FigureDesk& figures, QWidget* parent = nullptr);

private:
    FigureView* addTable(const QString& title, const QStringList& columns);
    void refresh();

    Desk& m_desk;
    FigureDesk& m_figures;
    QTabWidget* m_tabs;
    FigureView* m_totals;
    FigureView* m_places;
    FigureView* m_pieces;
    FigureView* m_remarks;
};

} // namespace miterbook
