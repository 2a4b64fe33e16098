// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "plan/point.h"

#include <QObject>
#include <QPointF>
#include <QString>

#include <vector>

class QAction;

namespace miterbook {

class Desk;
class FigureDesk;
class PlanPanel;

/// Saw and bench over the drawing: where they stand best, where the crew has put them, and what is
/// walked from there with sets to their openings and back.
class SawOverlay final : public QObject {
    Q_OBJECT
public:
    SawOverlay(Desk& desk, FigureDesk& figures, PlanPanel& drawing, QObject* parent = nullptr);

    /// One mark as it is drawn, in inches of the drawing.
    struct Mark {
        QPointF at;
        QString words;
        bool chosen = false; ///< by the crew; else the best
    };
    const std::vector<Mark>& marks() const { return m_marks; }
    QAction* bestAction() const { return m_best; }
    QAction* awayAction() const { return m_away; }

private:
    void show();
    void put(PlanPoint point);
    void takeAway();

    Desk& m_desk;
    FigureDesk& m_figures;
    PlanPanel& m_drawing;
    QAction* m_best;
    QAction* m_away;
    std::vector<Mark> m_marks;
};

} // namespace miterbook
