// SPDX-License-Identifier: GPL-3.0-or-later
#include "windows/timeline.h"

#include "widgets/spoken_role.h"

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
    speakAs(*this, QAccessible::Graphic);
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
    place();
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
        std::clamp(m_tops.empty() ? 0 : m_tops.back(), 3 * lineHeight(), 12 * lineHeight()) + 4};
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

Timeline::Place Timeline::placeOf(const Bar& bar) const {
    const int left = xOf(bar.from);
    Place place;
    place.text = bar.clashes ? bar.text + tr(" CLASH") : bar.text;
    place.box = {left, 3, std::max(6, xOf(addDays(bar.to, 1)) - left - 2), lineHeight() - 6};
    const int wanted = fontMetrics().horizontalAdvance(place.text) + 8;
    place.words = place.box.adjusted(4, 0, wanted - 8 - place.box.width(), 0);
    if (wanted > place.box.width()) { // beside a bar that is too short for its words
        place.words.moveLeft(place.box.right() + 4);
        if (place.words.right() > width())
            place.words.moveRight(place.box.left() - 6);
    }
    return place;
}

void Timeline::place() {
    m_places.clear();
    for (const Bar& bar : m_bars)
        m_places.push_back(placeOf(bar));
    m_tops = {lineHeight()};
    for (const QString& line : m_lines) {
        std::vector<std::vector<QRect>> lanes(1);
        for (std::size_t i = 0; i < m_bars.size(); ++i) {
            if (m_bars[i].line != line)
                continue;
            const QRect all = m_places[i].box.united(m_places[i].words).adjusted(-4, 0, 4, 0);
            const auto free = std::ranges::find_if(lanes, [&](const std::vector<QRect>& lane) {
                return std::ranges::none_of(
                    lane, [&](const QRect& other) { return other.intersects(all); });
            });
            const auto lane = free - lanes.begin();
            if (free == lanes.end())
                lanes.emplace_back();
            lanes[static_cast<std::size_t>(lane)].push_back(all);
            const int down = m_tops.back() + lineHeight() * static_cast<int>(lane);
            m_places[i].box.translate(0, down);
            m_places[i].words.translate(0, down);
        }
        m_tops.push_back(m_tops.back() + lineHeight() * static_cast<int>(lanes.size()));
    }
    updateGeometry();
}

void Timeline::resizeEvent(QResizeEvent*) {
    place();
}

void Timeline::paintBar(QPainter& painter, const Bar& bar, const Place& place) const {
    painter.setPen(palette().color(QPalette::WindowText));
    painter.setBrush(palette().color(QPalette::Button));
    painter.drawRect(place.box);
    if (bar.clashes)
        painter.fillRect(
            place.box, QBrush(palette().color(QPalette::WindowText), Qt::BDiagPattern));
    if (bar.clashes && place.box.intersects(place.words))
        painter.fillRect(place.words.adjusted(0, 2, 0, -2), palette().color(QPalette::Button));
    painter.drawText(place.words, Qt::AlignLeft | Qt::AlignVCenter | Qt::TextDontClip, place.text);
}

void Timeline::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    if (m_bars.empty())
        return;
    paintDays(painter);
    painter.setPen(palette().color(QPalette::WindowText));
    for (qsizetype line = 0; line < m_lines.size(); ++line) {
        const int top = m_tops[static_cast<std::size_t>(line)];
        painter.drawText(QRect(4, top, nameWidth() - 8, lineHeight()),
            Qt::AlignLeft | Qt::AlignVCenter,
            fontMetrics().elidedText(m_lines[line], Qt::ElideRight, nameWidth() - 12));
    }
    for (std::size_t i = 0; i < m_bars.size(); ++i)
        paintBar(painter, m_bars[i], m_places[i]);
}

} // namespace miterbook
