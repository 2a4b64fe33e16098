// SPDX-License-Identifier: GPL-3.0-or-later
#include "stages/plan/drawing/picture_painter.h"
#include "stages/plan/drawing/room_name.h"

#include "widgets/cell_look.h"

#include <QFontMetricsF>

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
    const std::vector<QPointF>& centres, const QFont& font, const QColor& ink,
    const QRectF& within) {
    const QFontMetricsF metrics(font, m_painter.device());
    QSizeF size;
    for (const QString& line : text.split(QChar(u'\n'))) {
        size.setWidth(std::max(size.width(), metrics.horizontalAdvance(line) + 4));
        size.setHeight(size.height() + metrics.height());
    }
    const auto rect = m_places.place(size, centres, within);
    if (!rect)
        return rect;
    m_painter.setFont(font);
    // A rim of paper, for words that lie over lines.
    m_painter.setPen(m_paper);
    constexpr double rim = 1.2;
    for (const QPointF& off :
        {QPointF(-rim, -rim), QPointF(rim, -rim), QPointF(-rim, rim), QPointF(rim, rim)})
        m_painter.drawText(rect->translated(off), Qt::AlignCenter | Qt::TextDontClip, text);
    m_painter.setPen(ink);
    m_painter.drawText(*rect, Qt::AlignCenter | Qt::TextDontClip, text);
    return rect;
}

/// As in the tables: what differs is set slanted, what is taken away is struck out.
QFont PicturePainter::marked(QFont font, RowMark mark) {
    font.setItalic(mark == RowMark::added || mark == RowMark::changed);
    font.setStrikeOut(mark == RowMark::removed);
    return font;
}

void PicturePainter::label(const PictureRows& rows) {
    // Marks of openings first: they are what papers and people go by.
    for (const PictureOpening& opening : rows.openings)
        labelOpening(opening);
    for (const PictureRoom& room : rows.rooms)
        labelRoom(room);
    for (const PictureWork& work : rows.works)
        labelWork(work, rows.rooms);
}

void PicturePainter::labelOpening(const PictureOpening& opening) {
    const QPointF at = m_frame.toScreen(opening.at);
    if (opening.label.isEmpty() || m_frame.scale() < leastTextScale
        || !m_view.adjusted(-40, -40, 40, 40).contains(at))
        return;
    const bool chosen = isSelected(DrawnItem::Kind::opening, opening.key);
    const QString label = labelOf(opening, chosen);
    const QFont font = marked(chosen ? m_bold : m_small, opening.mark);
    const QFontMetricsF metrics(font, m_painter.device());
    const double wide = metrics.horizontalAdvance(label) / 2 + 4;
    const double away = std::abs(opening.out.x()) * wide
        + std::abs(opening.out.y()) * metrics.height() / 2 + 3;
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
    const QFontMetricsF bold(m_bold, m_painter.device());
    const QFontMetricsF small(m_small, m_painter.device());
    const QRectF inside = box.adjusted(1, 1, -1, -1);
    QString name = room.name;
    if (room.mark != RowMark::plain)
        name += QStringLiteral(" (%1)").arg(differenceWord(room.mark, room.before));
    const QSizeF space(inside.width() - 4, inside.height());
    for (const FittedName& fitted : fittedNames(name, room.number, space, bold, small)) {
        if (writeName(room, fitted, inside))
            return;
    }
}

/// The name and, where there is space for it, the size below.
bool PicturePainter::writeName(
    const PictureRoom& room, const FittedName& fitted, const QRectF& inside) {
    const QFont font = marked(fitted.small ? m_small : m_bold, room.mark);
    const double line = QFontMetricsF(font, m_painter.device()).height();
    const QFontMetricsF small(m_small, m_painter.device());
    const double high = line * fitted.lines();
    const bool both = !fitted.small && small.horizontalAdvance(room.size) + 4 < inside.width()
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
        write(room.size, {name + below, name - below}, m_small, m_quiet, inside);
    }
    return written.has_value();
}

void PicturePainter::labelWalls(const PictureRoom& room) {
    const QPolygonF outline = onScreen(room.outline);
    const QRectF box = outline.boundingRect();
    const QFontMetricsF metrics(m_small, m_painter.device());
    if (!box.intersects(m_view) || box.height() < metrics.height() * leastLines)
        return;
    // Walls across from each other are as long; one of the two says so.
    const qsizetype walls = isRectangle(room) ? 2 : outline.size();
    for (qsizetype i = 0; i < walls; ++i) {
        const QPointF a = outline[i];
        const QPointF way = outline[(i + 1) % outline.size()] - a;
        const double length = std::hypot(way.x(), way.y());
        const QString& text = room.lengths[static_cast<std::size_t>(i)];
        const double wide = metrics.horizontalAdvance(text);
        const bool upright = std::abs(way.y()) > std::abs(way.x());
        if (length < (upright ? metrics.height() * 2 : wide * 1.2)
            || (upright && box.width() < wide * leastWidths))
            continue;
        const QPointF in = QPointF(-way.y(), way.x()) / length;
        const double off = upright ? wide / 2 + 6 : metrics.height() / 2 + 4;
        const QPointF middle = a + way / 2;
        write(text,
            {middle + in * off, a + way * 0.3 + in * off, a + way * 0.7 + in * off,
                middle - in * off},
            m_small, m_quiet);
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
    const QFont font = marked(m_small, work.mark);
    const QFontMetricsF metrics(font, m_painter.device());
    const QSizeF size(metrics.horizontalAdvance(name), metrics.height());
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

} // namespace miterbook
