// SPDX-License-Identifier: GPL-3.0-or-later
#include "stages/plan/drawing/picture_painter.h"

#include "widgets/accent.h"

#include <QPainterPath>

namespace miterbook {

namespace {

constexpr double wallPen = 2.4;
constexpr double chosenPen = 3.6;
constexpr double handleSize = 7;

QColor mixed(const QColor& a, const QColor& b, double part) {
    const auto mix = [&](int x, int y) { return static_cast<int>(x + (y - x) * part); };
    return {mix(a.red(), b.red()), mix(a.green(), b.green()), mix(a.blue(), b.blue())};
}

} // namespace

PicturePainter::PicturePainter(QPainter& painter, const ViewFrame& frame, const QPalette& palette,
    const QRectF& view, const PictureLook& look, LabelFonts& fonts)
    : m_painter(painter)
    , m_frame(frame)
    , m_palette(palette)
    , m_view(view)
    , m_look(look)
    , m_fonts(fonts)
    , m_ink(palette.color(QPalette::Text))
    , m_paper(palette.color(QPalette::Base))
    , m_chosen(palette.color(QPalette::Highlight))
    , m_accent(accentColour(palette)) {
    m_quiet = mixed(m_ink, m_paper, 0.4);
}

void PicturePainter::paint(const PlanPicture& picture) {
    m_painter.setRenderHint(QPainter::Antialiasing);
    for (const PictureRoom& room : picture.rooms)
        fillRoom(room);
    for (const PictureRoom& room : picture.rooms) {
        if (isSeen(room.outline.boundingRect())) {
            drawBreaks(room);
            drawWalls(room);
        }
    }
    drawApart(picture.apart);
    for (const auto* stairs : {&picture.fromBelow, &picture.stairs}) {
        for (const PictureStair& stair : *stairs)
            drawStair(stair);
    }
    for (const PictureOpening& opening : picture.openings)
        drawOpening(opening);
    for (const PictureWork& work : picture.works)
        drawWork(work);
    drawLegend(picture.differences);
    label(picture);
    for (const PictureStair& stair : picture.fromBelow)
        labelStair(stair);
    label(picture.apart);
    for (const PictureRoom& room : picture.rooms) {
        const bool chosen = isSelected(DrawnItem::Kind::room, room.key);
        if (chosen || m_look.lengths)
            labelWalls(room);
        if (chosen && m_look.handles)
            drawHandles(room);
    }
}

void PicturePainter::drawApart(const PictureRows& rows) {
    for (const PictureRoom& room : rows.rooms) {
        if (isSeen(room.outline.boundingRect()))
            drawWalls(room);
    }
    for (const PictureOpening& opening : rows.openings)
        drawOpening(opening);
    for (const PictureWork& work : rows.works)
        drawWork(work);
    for (const PictureStair& stair : rows.stairs)
        drawStair(stair);
}

bool PicturePainter::isSeen(const QRectF& inches) const {
    const QRectF screen(m_frame.toScreen(inches.topLeft()), m_frame.toScreen(inches.bottomRight()));
    return screen.adjusted(-60, -60, 60, 60).intersects(m_view);
}

QPolygonF PicturePainter::onScreen(const QPolygonF& inches) const {
    QPolygonF screen;
    screen.reserve(inches.size());
    for (const QPointF& point : inches)
        screen.append(m_frame.toScreen(point));
    return screen;
}

QPen PicturePainter::penOf(RowMark mark, bool selected, double width) const {
    QPen pen(selected ? m_chosen : m_ink, selected ? width + chosenPen - wallPen : width);
    if (mark == RowMark::removed) {
        pen.setStyle(Qt::DotLine);
        pen.setColor(selected ? m_chosen : m_quiet);
    } else if (mark != RowMark::plain) {
        pen.setStyle(mark == RowMark::added ? Qt::DashLine : Qt::DashDotLine);
        pen.setColor(selected ? m_chosen : m_accent);
    }
    pen.setJoinStyle(Qt::MiterJoin);
    return pen;
}

void PicturePainter::fillRoom(const PictureRoom& room) {
    if (room.mark == RowMark::removed || !isSeen(room.outline.boundingRect()))
        return;
    const bool chosen = isSelected(DrawnItem::Kind::room, room.key);
    QColor fill = chosen ? mixed(m_paper, m_chosen, 0.16) : mixed(m_paper, m_ink, 0.04);
    if (m_look.overSheet)
        fill.setAlpha(chosen ? 120 : 60);
    m_painter.setPen(Qt::NoPen);
    m_painter.setBrush(fill);
    m_painter.drawPolygon(onScreen(room.outline));
}

void PicturePainter::drawBreaks(const PictureRoom& room) {
    m_painter.setPen(QPen(m_quiet, 1));
    m_painter.setBrush(QBrush(mixed(m_paper, m_ink, 0.3), Qt::BDiagPattern));
    for (const PictureRoom::Break& each : room.breaks)
        m_painter.drawPolygon(onScreen(each.outline));
}

void PicturePainter::drawWalls(const PictureRoom& room) {
    const bool chosen = isSelected(DrawnItem::Kind::room, room.key);
    const QPolygonF outline = onScreen(room.outline);
    m_painter.setBrush(Qt::NoBrush);
    const QPen pen = penOf(room.mark, chosen, wallPen);
    QPen bare = pen; // a wall without base is thin
    bare.setWidthF(1);
    for (qsizetype i = 0; i < outline.size(); ++i) {
        m_painter.setPen(room.bare[static_cast<std::size_t>(i)] ? bare : pen);
        m_painter.drawLine(outline[i], outline[(i + 1) % outline.size()]);
    }
    if (chosen && m_look.wall >= 0 && m_look.wall < outline.size()) {
        m_painter.setPen(QPen(m_accent, chosenPen + 2));
        m_painter.drawLine(outline[m_look.wall], outline[(m_look.wall + 1) % outline.size()]);
    }
}

void PicturePainter::drawHandles(const PictureRoom& room) {
    const QPolygonF outline = onScreen(room.outline);
    m_painter.setPen(QPen(m_chosen, 1.5));
    m_painter.setBrush(m_paper);
    for (qsizetype i = 0; i < outline.size(); ++i) {
        const QPointF corner(handleSize / 2, handleSize / 2);
        m_painter.drawRect(QRectF(outline[i] - corner, outline[i] + corner));
        const QPointF middle = (outline[i] + outline[(i + 1) % outline.size()]) / 2;
        m_painter.drawEllipse(middle, handleSize / 2, handleSize / 2);
    }
}

void PicturePainter::drawOpening(const PictureOpening& opening) {
    const double scale = m_frame.scale();
    const QPointF at = m_frame.toScreen(opening.at);
    if (!m_view.adjusted(-80, -80, 80, 80).contains(at))
        return;
    const QPointF half = opening.along * (opening.width / 2 * scale);
    const QPointF out = opening.out * std::max(opening.depth * scale, 3.0);
    const bool chosen = isSelected(DrawnItem::Kind::opening, opening.key);
    if (opening.mark == RowMark::removed) {
        m_painter.setPen(penOf(opening.mark, chosen, 1.8));
        strike(at, half, out);
        return;
    }
    // The wall is open: paper between its faces.
    m_painter.setPen(Qt::NoPen);
    m_painter.setBrush(m_paper);
    const QPointF over = opening.out * 2;
    m_painter.drawPolygon(QPolygonF(
        {at - half - over, at + half - over, at + half + out + over, at - half + out + over}));
    m_painter.setPen(penOf(opening.mark, chosen, 1.4));
    m_painter.setBrush(Qt::NoBrush);
    m_painter.drawLine(at - half, at - half + out);
    m_painter.drawLine(at + half, at + half + out);
    if (opening.window)
        drawWindow(opening, half, out);
    else
        drawLeaves(opening, half, out);
    drawState(opening, at + out / 2);
}

/// What is taken away is crossed out and leaves the wall closed.
void PicturePainter::strike(QPointF at, QPointF half, QPointF out) {
    const double depth = std::hypot(out.x(), out.y());
    const QPointF way = out / depth * std::max(depth, 6.0);
    m_painter.setBrush(Qt::NoBrush);
    m_painter.drawPolygon(QPolygonF({at - half, at + half, at + half + way, at - half + way}));
    m_painter.drawLine(at - half, at + half + way);
    m_painter.drawLine(at + half, at - half + way);
}

void PicturePainter::drawWindow(const PictureOpening& opening, QPointF half, QPointF out) {
    const QPointF at = m_frame.toScreen(opening.at);
    for (const double part : {0.0, 0.5, 1.0})
        m_painter.drawLine(at - half + out * part, at + half + out * part);
}

/// The leaf open at a right angle into the room, and the way it swings; other doors by their leaves
/// in the opening.
void PicturePainter::drawLeaves(const PictureOpening& opening, QPointF half, QPointF out) {
    const QPointF at = m_frame.toScreen(opening.at);
    const double length = 2 * std::hypot(half.x(), half.y());
    const QPointF in = -opening.out * length;
    const auto swing = [&](QPointF hinge, QPointF latch, QPointF leaf) {
        QPainterPath path(hinge);
        path.lineTo(hinge + leaf);
        // A quarter circle as one curve.
        constexpr double k = 0.5523;
        const QPointF from = hinge + leaf;
        const QPointF to = hinge + latch;
        path.cubicTo(from + latch * k, to + leaf * k, to);
        m_painter.drawPath(path);
    };
    switch (opening.leaves) {
    case Leaves::swing: {
        const bool left = opening.hand != Hand::right;
        const QPointF hinge = left ? at - half : at + half;
        swing(hinge, left ? half * 2 : -half * 2, in);
        break;
    }
    case Leaves::pair:
        swing(at - half, half, in / 2);
        swing(at + half, -half, in / 2);
        break;
    case Leaves::folding:
        m_painter.drawPolyline(QPolygonF({at - half, at - half / 2 + in / 4, at}));
        m_painter.drawPolyline(QPolygonF({at, at + half / 2 + in / 4, at + half}));
        break;
    case Leaves::sliding:
        m_painter.drawLine(at - half + out * 0.35, at + half * 0.1 + out * 0.35);
        m_painter.drawLine(at - half * 0.1 + out * 0.65, at + half + out * 0.65);
        break;
    case Leaves::pocket:
        m_painter.drawLine(at - half * 2 + out * 0.5, at + out * 0.5);
        break;
    case Leaves::none:
        break;
    }
}

/// Listed: an open circle; cut: half filled; assembled: filled; hung: filled with a tick.
void PicturePainter::drawState(const PictureOpening& opening, QPointF at) {
    if (!opening.state)
        return;
    const double r = 5;
    const QRectF circle(at.x() - r, at.y() - r, 2 * r, 2 * r);
    m_painter.setPen(QPen(m_accent, 1.4));
    m_painter.setBrush(m_paper);
    m_painter.drawEllipse(circle);
    m_painter.setBrush(m_accent);
    if (*opening.state == PieceState::cut)
        m_painter.drawPie(circle, 90 * 16, 180 * 16);
    else if (*opening.state != PieceState::listed)
        m_painter.drawEllipse(circle);
    if (*opening.state == PieceState::hung) {
        m_painter.setPen(QPen(m_paper, 1.6));
        m_painter.drawPolyline(
            QPolygonF({at + QPointF(-2.6, 0), at + QPointF(-0.6, 2.2), at + QPointF(2.8, -2.4)}));
    }
}

void PicturePainter::drawWork(const PictureWork& work) {
    const bool chosen = isSelected(DrawnItem::Kind::work, work.key);
    m_painter.setPen(penOf(work.mark, chosen, 1.8));
    const QPolygonF marks = onScreen(work.marks);
    m_painter.setBrush(Qt::NoBrush);
    if (work.kind == MarkKind::run) {
        m_painter.drawPolyline(marks);
    } else if (work.kind == MarkKind::area) {
        m_painter.setBrush(QBrush(m_accent, Qt::FDiagPattern));
        m_painter.drawPolygon(marks);
        return;
    }
    for (const QPointF& at : marks) {
        m_painter.drawLine(at + QPointF(-5, 0), at + QPointF(5, 0));
        m_painter.drawLine(at + QPointF(0, -5), at + QPointF(0, 5));
    }
}

/// Treads and an arrow from foot to head. What is above the cut of the plan is dotted; so is all of
/// a stair that comes up from below.
void PicturePainter::drawStair(const PictureStair& stair) {
    if (!isSeen(stair.bounds()))
        return;
    m_lined.push_back(onScreen(QPolygonF(stair.bounds())).boundingRect());
    const bool below = stair.comesUp();
    const bool chosen = stair.key != 0 && isSelected(DrawnItem::Kind::stair, stair.key);
    QPen pen = penOf(stair.mark, chosen, 1.1);
    if (below)
        pen.setColor(m_quiet);
    QPen dotted = pen;
    dotted.setStyle(Qt::DotLine);
    m_painter.setPen(below ? dotted : pen);
    m_painter.setBrush(Qt::NoBrush);
    for (const QPolygonF& part : stair.parts)
        m_painter.drawPolygon(onScreen(part));
    constexpr double leastTread = 2.5; // pixels between risers, or they are a grey field
    const bool fine = stair.risers.size() < 2
        || QLineF(stair.risers[0].line.p1(), stair.risers[1].line.p1()).length() * m_frame.scale()
            >= leastTread;
    for (const PictureStair::Riser& riser : stair.risers) {
        if (!fine)
            break;
        m_painter.setPen(riser.above || below ? dotted : pen);
        m_painter.drawLine(m_frame.toScreen(riser.line.p1()), m_frame.toScreen(riser.line.p2()));
    }
    m_painter.setPen(pen);
    m_painter.drawPolyline(onScreen(stair.way));
    m_painter.drawPolyline(onScreen(stair.arrow));
}

} // namespace miterbook
