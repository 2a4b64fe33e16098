// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "plan/point.h"

#include <QPointF>
#include <QRectF>
#include <QSizeF>

#include <algorithm>

namespace miterbook {

/// Inches on the plan and pixels of the screen.
class ViewFrame {
public:
    static constexpr double leastScale = 0.02; ///< pixels to the inch: 300 ft in 72 pixels
    static constexpr double mostScale = 64;

    double scale() const { return m_scale; }
    QPointF toScreen(QPointF inches) const { return inches * m_scale + m_origin; }
    QPointF toScreen(PlanPoint point) const { return toScreen(inches(point)); }
    QPointF toInches(QPointF screen) const { return (screen - m_origin) / m_scale; }
    PlanPoint toPlan(QPointF screen) const {
        const QPointF at = toInches(screen);
        return {Length::fromInches(at.x()), Length::fromInches(at.y())};
    }
    /// A distance on the screen as a length on the plan.
    Length length(double pixels) const { return Length::fromInches(pixels / m_scale); }

    void pan(QPointF pixels) { m_origin += pixels; }
    /// The plan below `at` stays there.
    void zoom(double factor, QPointF at) {
        const QPointF below = toInches(at);
        m_scale = std::clamp(m_scale * factor, leastScale, mostScale);
        m_origin = at - below * m_scale;
    }
    /// Shows a rectangle of the plan whole, with a margin.
    void fit(const QRectF& inches, QSizeF view) {
        const double margin = 0.92;
        if (inches.width() <= 0 && inches.height() <= 0)
            return;
        const double across = view.width() / std::max(inches.width(), 1.0);
        const double down = view.height() / std::max(inches.height(), 1.0);
        m_scale = std::clamp(std::min(across, down) * margin, leastScale, mostScale);
        m_origin = QPointF(view.width() / 2, view.height() / 2) - inches.center() * m_scale;
    }

    static QPointF inches(PlanPoint point) { return {point.x.toInches(), point.y.toInches()}; }

private:
    double m_scale = 1.0;
    QPointF m_origin{40, 40};
};

} // namespace miterbook
