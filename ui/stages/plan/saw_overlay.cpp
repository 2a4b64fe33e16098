// SPDX-License-Identifier: GPL-3.0-or-later
#include "stages/plan/saw_overlay.h"

#include "basics/amount_text.h"
#include "cut/saw_place.h"
#include "desk/desk.h"
#include "desk/figure_desk.h"
#include "desk/text.h"
#include "job/saw_spot_edit.h"
#include "stages/plan/drawing/plan_panel.h"
#include "widgets/accent.h"

#include <QAction>
#include <QPainter>

namespace miterbook {

namespace {

QPointF sawInches(Spot spot) {
    return {spot.x.toInches(), spot.y.toInches()};
}

/// A cross for the best place, a saw's round table for where it stands: told apart without colour.
void paintSawMark(
    QPainter& painter, const SawOverlay::Mark& mark, QPointF spot, const QColor& ground) {
    constexpr double reach = 12;
    if (mark.chosen) {
        painter.drawEllipse(spot, reach, reach);
        painter.drawLine(spot - QPointF(reach, 0), spot + QPointF(reach, 0));
    } else {
        painter.drawLine(spot - QPointF(reach, reach), spot + QPointF(reach, reach));
        painter.drawLine(spot - QPointF(reach, -reach), spot + QPointF(reach, -reach));
    }
    // Names and sizes below it would show through the words.
    const QSizeF size = painter.fontMetrics().size(Qt::TextSingleLine, mark.words) + QSize(6, 2);
    const QRectF box(spot + QPointF(reach + 4, -size.height() / 2), size);
    painter.fillRect(box, ground);
    painter.drawText(box, Qt::AlignCenter | Qt::TextSingleLine, mark.words);
}

} // namespace

SawOverlay::SawOverlay(Desk& desk, FigureDesk& figures, PlanPanel& drawing, QObject* parent)
    : QObject(parent)
    , m_desk(desk)
    , m_figures(figures)
    , m_drawing(drawing)
    , m_best(new QAction(tr("Show where the &saw stands best"), this))
    , m_away(new QAction(tr("Take the saw a&way"), this)) {
    m_best->setCheckable(true);
    drawing.addMore(m_best);
    drawing.addMore(m_away);
    connect(m_best, &QAction::toggled, this, &SawOverlay::show);
    connect(m_away, &QAction::triggered, this, &SawOverlay::takeAway);
    connect(&drawing.view(), &PlanView::sawPut, this, &SawOverlay::put);
    connect(&drawing, &PlanPanel::levelShown, this, &SawOverlay::show);
    connect(&figures, &FigureDesk::figured, this, &SawOverlay::show);
    connect(&figures, &FigureDesk::sawRowsChanged, this, &SawOverlay::show);
    show();
}

void SawOverlay::show() {
    const WholePlan& whole = m_figures.figures().whole;
    const Id<Level> level = m_drawing.level();
    const LengthUnit written = m_desk.book().prices.shop().unit;
    const auto toWalk = [&](Length walked) { return text(formatRunWithUnit(walked, written, 0)); };
    m_marks.clear();
    if (const auto best = m_best->isChecked() ? sawPlaceOn(whole, level) : std::nullopt)
        m_marks.push_back({sawInches(best->spot),
            tr("Best for the saw: %1 to walk").arg(toWalk(best->walked)), false});
    const SawSpot* put = sawSpotOn(m_desk.book(), m_figures.job().plan, level);
    if (put) {
        const auto walked = walkedFrom(whole, level, {put->x, put->y});
        m_marks.push_back({sawInches({put->x, put->y}),
            walked ? tr("Saw: %1 to walk").arg(toWalk(*walked)) : tr("Saw"), true});
    }
    m_away->setEnabled(put != nullptr);
    if (m_marks.empty()) {
        m_drawing.view().setOverlayer({});
        return;
    }
    m_drawing.view().setOverlayer([this](QPainter& painter, const ViewFrame& frame) {
        painter.setPen(QPen(accentColour(m_drawing.palette()), 3));
        painter.setBrush(Qt::NoBrush);
        for (const Mark& mark : m_marks)
            paintSawMark(
                painter, mark, frame.toScreen(mark.at), m_drawing.palette().color(QPalette::Base));
    });
}

void SawOverlay::put(PlanPoint point) {
    const auto edit = sawSpotEdit(
        m_desk.book(), m_desk.ids(), m_figures.job().plan, m_drawing.level(), {point.x, point.y});
    if (edit)
        m_desk.perform(*edit);
    else
        m_desk.refuse(edit.error());
}

void SawOverlay::takeAway() {
    m_desk.perform(noSawSpotEdit(m_desk.book(), m_figures.job().plan, m_drawing.level()));
}

} // namespace miterbook
