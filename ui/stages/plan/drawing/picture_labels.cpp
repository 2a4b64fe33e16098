// SPDX-License-Identifier: GPL-3.0-or-later
#include "stages/plan/drawing/picture_painter.h"
#include "stages/plan/drawing/room_name.h"

#include "widgets/cell_look.h"

#include <algorithm>

namespace miterbook {

namespace {

constexpr double leastTextScale = 0.12; // pixels to the inch below which words say nothing
constexpr double leastLines = 4;  // high a room is whose walls are labelled, or they crowd its name
constexpr double leastWidths = 3; // of a label: wide a room is for one at its upright walls

QString differenceWord(RowMark mark, bool before) {
    return before ? QObject::tr("before") : wordOf(mark);
}

/// The mark, what an elevation or option does to it, and the size of what is chosen.
QString labelOf(const PictureOpening& opening, bool chosen) {
    QString label = opening.label;
    if (opening.mark != RowMark::plain)
        label += QChar(u' ') + differenceWord(opening.mark, opening.before);
    if (chosen)
        label += QStringLiteral("  ") + opening.size;
    return label;
}

bool isRectangle(const PictureRoom& room) {
    const std::vector<QString>& lengths = room.lengths;
    return lengths.size() == 4 && lengths[0] == lengths[2] && lengths[1] == lengths[3];
}

} // namespace

std::optional<QRectF> PicturePainter::write(const QString& text,
    const std::vector<QPointF>& centres, const LabelFont& font, const QColor& ink,
    const QRectF& within) {
    QSizeF size;
    for (const QString& line : text.split(QChar(u'\n'))) {
        size.setWidth(std::max(size.width(), font.width(line) + 4));
        size.setHeight(size.height() + font.height());
    }
    const auto rect = m_places.place(size, centres, within);
    if (!rect)
        return rect;
    const bool overLines = !within.isValid() || m_look.overSheet
        || std::ranges::any_of(m_lined, [&](const QRectF& each) { return each.intersects(*rect); });
    if (overLines) { // a rim of paper
        constexpr double off = 1.2;
        for (const QPointF& way :
            {QPointF(-off, -off), QPointF(off, -off), QPointF(-off, off), QPointF(off, off)})
            font.write(m_painter, *rect, text, m_paper, way);
    }
    font.write(m_painter, *rect, text, ink);
    return rect;
}

void PicturePainter::label(const PictureRows& rows) {
    // Marks of openings first: they are what papers and people go by.
    for (const PictureOpening& opening : rows.openings)
        labelOpening(opening);
    for (const PictureRoom& room : rows.rooms)
        labelRoom(room);
    for (const PictureWork& work : rows.works)
        labelWork(work, rows.rooms);
    for (const PictureStair& stair : rows.stairs)
        labelStair(stair);
}

void PicturePainter::labelOpening(const PictureOpening& opening) {
    const QPointF at = m_frame.toScreen(opening.at);
    if (opening.label.isEmpty() || m_frame.scale() < leastTextScale
        || !m_view.adjusted(-40, -40, 40, 40).contains(at))
        return;
    const bool chosen = isSelected(DrawnItem::Kind::opening, opening.key);
    const QString label = labelOf(opening, chosen);
    const LabelFont& font = chosen ? m_fonts.bold(opening.mark) : m_fonts.small(opening.mark);
    const double wide = font.width(label) / 2 + 4;
    const double away = std::abs(opening.out.x()) * wide
        + std::abs(opening.out.y()) * font.height() / 2 + 3;
    const QPointF outside = opening.out * (opening.depth * m_frame.scale() + away);
    const QPointF inside = -opening.out * away;
    const QPointF aside = opening.along * (opening.width / 2 * m_frame.scale() + wide);
    write(label, {at + outside, at + inside, at + outside + aside, at + outside - aside}, font,
        chosen                               ? m_chosen
            : opening.mark == RowMark::plain ? m_ink
                                             : penOf(opening.mark, false, 1).color());
}

void PicturePainter::labelRoom(const PictureRoom& room) {
    const QRectF box = onScreen(room.outline).boundingRect();
    if (!box.intersects(m_view) || m_frame.scale() < leastTextScale)
        return;
    const QRectF inside = box.adjusted(1, 1, -1, -1);
    QString name = room.name;
    if (room.mark != RowMark::plain)
        name += QStringLiteral(" (%1)").arg(differenceWord(room.mark, room.before));
    const QSizeF space(inside.width() - 4, inside.height());
    for (const FittedName& fitted :
        fittedNames(name, room.number, space, m_fonts.bold(), m_fonts.small())) {
        if (writeName(room, fitted, inside))
            return;
    }
}

/// The name and, where there is space for it, the size below.
bool PicturePainter::writeName(
    const PictureRoom& room, const FittedName& fitted, const QRectF& inside) {
    const LabelFont& font = fitted.small ? m_fonts.small(room.mark) : m_fonts.bold(room.mark);
    const LabelFont& small = m_fonts.small();
    const double line = font.height();
    const double high = line * fitted.lines();
    const bool both = !fitted.small && small.width(room.size) + 4 < inside.width()
        && high + small.height() * 1.6 < inside.height();
    const QPointF at = m_frame.toScreen(room.middle) - QPointF(0, both ? small.height() / 2 : 0);
    std::vector<QPointF> places{at};
    for (const double step : {0.3, 0.6, 0.9, 1.2, 1.8, 2.4}) { // round about marks of openings
        for (const QPointF& way : {QPointF(0, line), QPointF(line, 0)}) {
            places.push_back(at + way * step);
            places.push_back(at - way * step);
        }
    }
    const auto written = write(
        fitted.text, places, font, room.mark == RowMark::removed ? m_quiet : m_ink, inside);
    if (written && both) {
        const QPointF below(0, (high + small.height()) / 2);
        const QPointF name = written->center();
        write(room.size, {name + below, name - below}, small, m_quiet, inside);
    }
    return written.has_value();
}

void PicturePainter::labelWalls(const PictureRoom& room) {
    const QPolygonF outline = onScreen(room.outline);
    const QRectF box = outline.boundingRect();
    const LabelFont& font = m_fonts.small();
    if (!box.intersects(m_view) || box.height() < font.height() * leastLines)
        return;
    // Walls across from each other are as long; one of the two says so.
    const qsizetype walls = isRectangle(room) ? 2 : outline.size();
    for (qsizetype i = 0; i < walls; ++i) {
        const QPointF a = outline[i];
        const QPointF way = outline[(i + 1) % outline.size()] - a;
        const double length = std::hypot(way.x(), way.y());
        const QString& text = room.lengths[static_cast<std::size_t>(i)];
        const double wide = font.width(text);
        const bool upright = std::abs(way.y()) > std::abs(way.x());
        if (length < (upright ? font.height() * 2 : wide * 1.2)
            || (upright && box.width() < wide * leastWidths))
            continue;
        const QPointF in = QPointF(-way.y(), way.x()) / length;
        const double off = upright ? wide / 2 + 6 : font.height() / 2 + 4;
        const QPointF middle = a + way / 2;
        write(text,
            {middle + in * off, a + way * 0.3 + in * off, a + way * 0.7 + in * off,
                middle - in * off},
            font, m_quiet);
    }
}

void PicturePainter::labelWork(const PictureWork& work, const std::vector<PictureRoom>& rooms) {
    const QPointF at = m_frame.toScreen(
        work.kind == MarkKind::area ? work.marks.boundingRect().center() : work.marks.front());
    if (!m_view.contains(at) || m_frame.scale() < leastTextScale)
        return;
    QString name = work.name;
    if (work.mark != RowMark::plain)
        name += QChar(u' ') + differenceWord(work.mark, work.before);
    const LabelFont& font = m_fonts.small(work.mark);
    const QSizeF size(font.width(name), font.height());
    const QPointF aside(size.width() / 2 + 9, 0);
    const QPointF below(0, size.height());
    const QPointF first = work.kind == MarkKind::area ? at : at + aside;
    std::vector<QPointF> places{first, at - aside, at + below, at - below};
    // Over as few walls as can be.
    std::ranges::stable_sort(places, {}, [&](const QPointF& centre) {
        const QRectF rect(centre - QPointF(size.width() / 2, size.height() / 2), size);
        return std::ranges::count_if(rooms, [&](const PictureRoom& room) {
            const QRectF box = onScreen(room.outline).boundingRect();
            return box.intersects(rect) && !box.contains(rect);
        });
    });
    write(name, places, font, m_accent);
}

/// UP by the foot of the arrow; DN by the head of a stair that comes up.
void PicturePainter::labelStair(const PictureStair& stair) {
    const bool below = stair.comesUp();
    const QPointF at = m_frame.toScreen(below ? stair.way.back() : stair.way.front());
    const QPointF next = m_frame.toScreen(below ? stair.way[stair.way.size() - 2] : stair.way[1]);
    const double length = std::hypot(next.x() - at.x(), next.y() - at.y());
    if (length < 20 || m_frame.scale() < leastTextScale
        || !m_view.adjusted(-40, -40, 40, 40).contains(at))
        return;
    QString label = stair.label;
    if (stair.mark != RowMark::plain)
        label += QChar(u' ') + differenceWord(stair.mark, stair.before);
    const QPointF in = (next - at) / length;
    write(label, {at + in * 12, at + in * 26, at - in * 10, at + in * 40},
        m_fonts.small(stair.mark), m_quiet);
}

} // namespace miterbook
