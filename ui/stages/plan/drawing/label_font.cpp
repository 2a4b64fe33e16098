// SPDX-License-Identifier: GPL-3.0-or-later
#include "stages/plan/drawing/label_font.h"

#include <QPainter>

#include <algorithm>

namespace miterbook {

namespace {

constexpr qsizetype mostShaped = 4000; // lengths while walls are dragged would grow without end

QFont sized(QFont font, double factor, bool bold) {
    font.setPointSizeF(std::max(font.pointSizeF() * factor, 6.0));
    font.setBold(bold);
    return font;
}

QFont marked(QFont font, RowMark mark) {
    font.setItalic(mark == RowMark::added || mark == RowMark::changed);
    font.setStrikeOut(mark == RowMark::removed);
    return font;
}

} // namespace

LabelFont::LabelFont(const QFont& font, const QPaintDevice* device)
    : m_font(font)
    , m_metrics(font, device) {
}

const QStaticText& LabelFont::shaped(const QString& line) const {
    const auto known = m_lines.constFind(line);
    if (known != m_lines.constEnd())
        return *known;
    if (m_lines.size() >= mostShaped)
        m_lines.clear();
    QStaticText text(line);
    text.setTextFormat(Qt::PlainText); // a room's name is the user's
    text.prepare(QTransform(), m_font);
    return *m_lines.insert(line, text);
}

double LabelFont::width(const QString& line) const {
    return shaped(line).size().width();
}

QString LabelFont::elided(const QString& line, double width) const {
    return m_metrics.elidedText(line, Qt::ElideRight, width);
}

void LabelFont::write(QPainter& painter, const QRectF& rect, const QString& text, const QColor& ink,
    QPointF off) const {
    const QStringList lines = text.split(QChar(u'\n'));
    double top = rect.center().y() - height() * double(lines.size()) / 2;
    painter.setFont(m_font);
    painter.setPen(ink);
    for (const QString& line : lines) {
        const QPointF at(rect.center().x() - width(line) / 2, top);
        painter.drawStaticText(at + off, shaped(line));
        top += height();
    }
}

LabelFonts::LabelFonts(const QFont& font, const QPaintDevice* device)
    : m_font(font)
    , m_device(device) {
}

const LabelFont& LabelFonts::get(bool small, RowMark mark) {
    const auto it = m_fonts.find({small, mark});
    if (it != m_fonts.end())
        return it->second;
    const QFont font = marked(sized(m_font, small ? 0.86 : 1.0, !small), mark);
    return m_fonts.emplace(std::pair(small, mark), LabelFont(font, m_device)).first->second;
}

} // namespace miterbook
