// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/text.h"
#include "stages/plan/drawing/picture_painter.h"
#include "widgets/cell_look.h"
#include "widgets/plain_text.h"

namespace miterbook {

namespace {

constexpr double sampleWidth = 34;
constexpr double legendMargin = 8;

struct LegendLine {
    RowMark mark = RowMark::plain; ///< plain: words alone
    QString words;
};

std::vector<LegendLine> legendLines(const PictureDifferences& differences) {
    std::vector<LegendLine> lines;
    const auto add = [&](RowMark mark, int count) {
        if (count > 0)
            lines.push_back({mark, QStringLiteral("%1: %2").arg(wordOf(mark)).arg(count)});
    };
    lines.push_back({RowMark::plain,
        QObject::tr("Drawn with %1").arg(differences.names.join(QStringLiteral(", ")))});
    add(RowMark::added, differences.added);
    add(RowMark::changed, differences.changed);
    add(RowMark::removed, differences.removed);
    if (differences.moved > 0)
        lines.push_back(
            {RowMark::plain, QObject::tr("stood here before: %1").arg(differences.moved)});
    if (lines.size() == 1)
        lines.push_back({RowMark::plain, QObject::tr("Nothing differs on this level.")});
    if (differences.undrawn > 0)
        lines.push_back({RowMark::plain,
            counted(differences.undrawn, QObject::tr("one of these only in the tables"),
                QObject::tr("%1 of these only in the tables"))});
    if (differences.reversed)
        lines.push_back(
            {RowMark::plain, QObject::tr("Built left for right; drawn as the plan is.")});
    return lines;
}

} // namespace

/// In the lower left corner: how the strokes of what differs are drawn, in words beside each.
void PicturePainter::drawLegend(const PictureDifferences& differences) {
    if (differences.names.isEmpty())
        return;
    const LabelFont& font = m_fonts.small();
    const std::vector<LegendLine> lines = legendLines(differences);
    const double room = m_view.width() - 4 * legendMargin;
    double wide = 0;
    for (const LegendLine& line : lines)
        wide = std::max(wide,
            font.width(line.words)
                + (line.mark == RowMark::plain ? 0 : sampleWidth + legendMargin));
    wide = std::min(wide, room);
    const double step = font.height();
    const QSizeF size(wide + 2 * legendMargin, step * double(lines.size()) + legendMargin);
    const QRectF box(m_view.left() + legendMargin, m_view.bottom() - legendMargin - size.height(),
        size.width(), size.height());
    m_places.keepFree(box);
    m_painter.setPen(QPen(m_quiet, 1));
    m_painter.setBrush(m_paper);
    m_painter.drawRect(box);
    QPointF at(box.left() + legendMargin, box.top() + legendMargin / 2);
    for (const LegendLine& line : lines) {
        double left = at.x();
        if (line.mark != RowMark::plain) {
            m_painter.setPen(penOf(line.mark, false, 2.4));
            m_painter.drawLine(at + QPointF(0, step / 2), at + QPointF(sampleWidth, step / 2));
            left += sampleWidth + legendMargin;
        }
        m_painter.setFont(m_fonts.small(line.mark).font());
        m_painter.setPen(m_ink);
        const QRectF place(left, at.y(), box.right() - legendMargin - left + 2, step);
        m_painter.drawText(place, Qt::AlignLeft | Qt::AlignVCenter | Qt::TextSingleLine,
            font.elided(line.words, place.width()));
        at += QPointF(0, step);
    }
}

} // namespace miterbook
