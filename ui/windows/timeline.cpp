// SPDX-License-Identifier: GPL-3.0-or-later
#include "windows/timeline.h"

#include <QPainter>

#include <algorithm>

namespace miterbook {

namespace {

int daysFrom(Date from, Date to) {
    return static_cast<int>((std::chrono::sys_days(to) - std::chrono::sys_days(from)).count());
}

bool isMonday(Date day) {
    return std::chrono::weekday(std::chrono::sys_days(day)) == std::chrono::Monday;
}

} // namespace

Timeline::Timeline(QWidget* parent)
    : QWidget(parent) {
    setAccessibleName(tr("Timeline of the houses"));
    setAccessibleDescription(tr("What it shows stands in the table of dates too."));
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Preferred);
}

void Timeline::setBars(std::vector<Bar> bars, Date today) {
    m_bars = std::move(bars);
    m_today = today;
    m_lines.clear();
    m_first = today;
    m_last = addDays(today, 14);
    for (const Bar& bar : m_bars) {
        if (!m_lines.contains(bar.line))
            m_lines << bar.line;
        m_first = std::min(m_first, bar.from);
        m_last = std::max(m_last, bar.to);
    }
    while (!isMonday(m_first))
        m_first = addDays(m_first, -1);
    updateGeometry();
    update();
}

int Timeline::lineHeight() const {
    return fontMetrics().height() + 8;
}

int Timeline::nameWidth() const {
    int width = fontMetrics().averageCharWidth() * 8;
    for (const QString& line : m_lines)
        width = std::max(width, fontMetrics().horizontalAdvance(line));
    return std::min(width, fontMetrics().averageCharWidth() * 24) + 12;
}

QSize Timeline::sizeHint() const {
    return {fontMetrics().averageCharWidth() * 100,
        lineHeight() * std::clamp(static_cast<int>(m_lines.size()) + 1, 3, 12) + 4};
}

QSize Timeline::minimumSizeHint() const {
    return {fontMetrics().averageCharWidth() * 40, lineHeight() * 3};
}

double Timeline::dayWidth() const {
    const int days = std::max(1, daysFrom(m_first, m_last) + 1);
    return std::max(0.5, double(width() - nameWidth() - 2) / days);
}

int Timeline::xOf(Date day) const {
    return nameWidth() + static_cast<int>(daysFrom(m_first, day) * dayWidth());
}

void Timeline::paintDays(QPainter& painter) const {
    const int step = fontMetrics().horizontalAdvance(QStringLiteral("2026-11-25 "));
    int free = 0;
    for (Date day = m_first; day <= m_last; day = addDays(day, 7)) {
        const int x = xOf(day);
        painter.setPen(palette().color(QPalette::Mid));
        painter.drawLine(x, 0, x, height());
        if (x < free || x + step > width())
            continue;
        painter.setPen(palette().color(QPalette::WindowText));
        painter.drawText(x + 3, fontMetrics().ascent() + 2, QString::fromStdString(isoDate(day)));
        free = x + step;
    }
    QPen pen(palette().color(QPalette::Highlight), 2, Qt::DashLine);
    painter.setPen(pen);
    painter.drawLine(xOf(m_today), 0, xOf(m_today), height());
}

void Timeline::paintBar(QPainter& painter, const Bar& bar, int top) const {
    const int left = xOf(bar.from);
    const QRect box(
        left, top + 3, std::max(6, xOf(addDays(bar.to, 1)) - left - 2), lineHeight() - 6);
    painter.setPen(palette().color(QPalette::WindowText));
    painter.setBrush(palette().color(QPalette::Button));
    painter.drawRect(box);
    if (bar.clashes)
        painter.fillRect(box, QBrush(palette().color(QPalette::WindowText), Qt::BDiagPattern));
    QString text = bar.text;
    if (bar.clashes)
        text += tr(" CLASH");
    const int wanted = fontMetrics().horizontalAdvance(text) + 8;
    QRect words = box.adjusted(4, 0, 0, 0);
    if (wanted > box.width()) // beside a bar that is too short for its words
        words = QRect(box.right() + 4, box.top(), wanted, box.height());
    else if (bar.clashes)
        painter.fillRect(words.adjusted(0, 2, wanted - 8 - words.width(), -2),
            palette().color(QPalette::Button));
    painter.drawText(words, Qt::AlignLeft | Qt::AlignVCenter, text);
}

void Timeline::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    if (m_bars.empty())
        return;
    paintDays(painter);
    for (qsizetype line = 0; line < m_lines.size(); ++line) {
        const int top = lineHeight() * (static_cast<int>(line) + 1);
        painter.setPen(palette().color(QPalette::WindowText));
        painter.drawText(QRect(4, top, nameWidth() - 8, lineHeight()),
            Qt::AlignLeft | Qt::AlignVCenter,
            fontMetrics().elidedText(m_lines[line], Qt::ElideRight, nameWidth() - 12));
        for (const Bar& bar : m_bars) {
            if (bar.line == m_lines[line])
                paintBar(painter, bar, top);
        }
    }
}

} // namespace miterbook
