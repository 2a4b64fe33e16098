// SPDX-License-Identifier: GPL-3.0-or-later
#include "stages/plan/drawing/picture_painter.h"

#include "widgets/cell_look.h"

#include <QFontMetricsF>

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

bool PicturePainter::write(const QString& text, std::initializer_list<QPointF> centres,
    const QFont& font, const QColor& ink) {
    const QFontMetricsF metrics(font, m_painter.device());
    const QSizeF size(metrics.horizontalAdvance(text) + 4, metrics.height());
    const auto rect = m_places.place(size, centres);
    if (!rect)
        return false;
    m_painter.setFont(font);
    m_painter.setPen(ink);
    m_painter.drawText(*rect, Qt::AlignCenter | Qt::TextSingleLine, text);
    return true;
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
        labelWork(work);
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
    const double line = bold.height();
    const double wide = box.width() - 6;
    // A room half out of sight still says its name where it is seen.
    QPointF at = m_frame.toScreen(room.middle);
    QString name = room.name;
    if (bold.horizontalAdvance(name) > wide)
        name = bold.elidedText(name, Qt::ElideRight, wide);
    if (name.size() < 3 && name != room.name)
        return;
    if (room.mark != RowMark::plain)
        name += QStringLiteral(" (%1)").arg(differenceWord(room.mark, room.before));
    const bool both = box.height() > 2.4 * line && bold.horizontalAdvance(room.size) < wide;
    const QPointF up(0, both ? -line / 2 : 0);
    const QPointF down(0, line);
    const bool written = write(name,
        {at + up, at + up + down * 1.2, at + up - down * 1.2, at + up + down * 2.4},
        marked(m_bold, room.mark), room.mark == RowMark::removed ? m_quiet : m_ink);
    if (written && both)
        write(room.size, {at + up + down, at + up + down * 2, at + up - down}, m_small, m_quiet);
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

void PicturePainter::labelWork(const PictureWork& work) {
    const QPointF at = m_frame.toScreen(
        work.kind == MarkKind::area ? work.marks.boundingRect().center() : work.marks.front());
    if (!m_view.contains(at) || m_frame.scale() < leastTextScale)
        return;
    QString name = work.name;
    if (work.mark != RowMark::plain)
        name += QChar(u' ') + differenceWord(work.mark, work.before);
    const QFont font = marked(m_small, work.mark);
    const QFontMetricsF metrics(font, m_painter.device());
    const QPointF aside(metrics.horizontalAdvance(name) / 2 + 9, 0);
    const QPointF below(0, metrics.height());
    const QPointF first = work.kind == MarkKind::area ? at : at + aside;
    write(name, {first, at - aside, at + below, at - below}, font, m_accent);
}

} // namespace miterbook
