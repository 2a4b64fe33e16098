// SPDX-License-Identifier: GPL-3.0-or-later
#include "stages/bid/risk_curve.h"

#include <QPainter>
#include <QPainterPath>

#include <algorithm>
#include <cmath>

namespace miterbook {

/// Hours across, chance per hour up.
struct RiskCurve::Scale {
    double low;
    double high;
    double top = 0; ///< the highest chance per hour
    QRectF area;
    const RiskOutlook& outlook;

    Scale(const RiskOutlook& shown, const QRectF& into, double from, double to)
        : low(from)
        , high(to)
        , area(into)
        , outlook(shown) {
        for (int i = 0; i <= steps; ++i)
            top = std::max(top, density(hoursAt(i)));
    }
    static constexpr int steps = 120;
    double hoursAt(int step) const { return low + (high - low) * step / steps; }
    double density(double hours) const {
        const double width = (high - low) / steps;
        return (outlook.chanceBelow(hours + width / 2) - outlook.chanceBelow(hours - width / 2))
            / width;
    }
    double x(double hours) const {
        return area.left() + area.width() * (hours - low) / (high - low);
    }
    double y(double chance) const { return area.bottom() - area.height() * chance / top; }
};

RiskCurve::RiskCurve(QWidget* parent)
    : QWidget(parent) {
    setAccessibleName(tr("How the hours may come out"));
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
}

void RiskCurve::show(RiskOutlook outlook, Hours bid) {
    m_outlook = std::move(outlook);
    m_bid = static_cast<double>(bid.minutes()) / 60;
    setAccessibleDescription(m_outlook.any()
            ? tr("Bid %1 hours, used up at %2 hours, expected %3 hours")
                  .arg(m_bid, 0, 'f', 0)
                  .arg(m_outlook.breakEvenHours(), 0, 'f', 0)
                  .arg(static_cast<double>(m_outlook.expected().minutes()) / 60, 0, 'f', 0)
            : tr("No hours yet"));
    update();
}

QSize RiskCurve::sizeHint() const {
    return {40 * fontMetrics().averageCharWidth(), 10 * fontMetrics().lineSpacing()};
}

void RiskCurve::paintArea(
    QPainter& painter, const Scale& scale, double from, double to, const QBrush& brush) const {
    from = std::clamp(from, scale.low, scale.high);
    to = std::clamp(to, scale.low, scale.high);
    if (from >= to)
        return;
    QPainterPath path(QPointF(scale.x(from), scale.area.bottom()));
    for (int i = 0; i <= Scale::steps; ++i) {
        const double hours = from + (to - from) * i / Scale::steps;
        path.lineTo(scale.x(hours), scale.y(scale.density(hours)));
    }
    path.lineTo(scale.x(to), scale.area.bottom());
    path.closeSubpath();
    painter.fillPath(path, brush);
    painter.strokePath(path, QPen(palette().color(QPalette::Text), 1));
}

void RiskCurve::paintMark(
    QPainter& painter, const Scale& scale, double hours, const QString& words, int line) const {
    if (hours < scale.low || hours > scale.high)
        return;
    const double x = scale.x(hours);
    const double top = scale.area.top() - fontMetrics().lineSpacing() * (2 - line);
    painter.setPen(QPen(palette().color(QPalette::Text), 1, Qt::DashLine));
    painter.drawLine(QPointF(x, top), QPointF(x, scale.area.bottom()));
    const double width = fontMetrics().horizontalAdvance(words) + 6;
    const bool fits = x + width < scale.area.right();
    painter.drawText(QPointF(fits ? x + 4 : x - width, top + fontMetrics().ascent()), words);
}

void RiskCurve::paintEvent(QPaintEvent*) {
    if (!m_outlook.any())
        return;
    const auto hoursOf = [](Hours hours) { return static_cast<double>(hours.minutes()) / 60; };
    const double end = m_outlook.breakEvenHours();
    const double low = std::min(hoursOf(m_outlook.hoursAt(0.005)), m_bid * 0.9);
    const double high = std::max(hoursOf(m_outlook.hoursAt(0.99)), m_bid * 1.1);
    const double line = fontMetrics().lineSpacing();
    const QRectF area = QRectF(rect()).adjusted(8, 2 * line + 4, -8, -line - 6);
    const Scale scale(m_outlook, area, low, high);
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    paintArea(painter, scale, low, std::min(end, high), palette().color(QPalette::Mid));
    paintArea(painter, scale, std::max(end, low), high,
        QBrush(palette().color(QPalette::Text), Qt::BDiagPattern));
    painter.setPen(palette().color(QPalette::Text));
    painter.drawLine(area.bottomLeft(), area.bottomRight());
    for (const double certainty : {0.05, 0.5, 0.95}) {
        const double hours = hoursOf(m_outlook.hoursAt(certainty));
        const QString words = tr("%1 h").arg(std::lround(hours));
        painter.drawText(QPointF(scale.x(hours) - fontMetrics().horizontalAdvance(words) / 2.0,
                             area.bottom() + line),
            words);
    }
    paintMark(painter, scale, m_bid, tr("bid: %1 h").arg(std::lround(m_bid)), 0);
    paintMark(painter, scale, end, tr("used up at %1 h").arg(std::lround(end)), 1);
}

} // namespace miterbook
