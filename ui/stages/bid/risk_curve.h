// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "bid/risk.h"

#include <QWidget>

namespace miterbook {

/// How the hours of the house may come out, as a curve: where it makes money is filled, where it
/// loses is hatched, with marks for the hours bid and for those at which the price is used up.
class RiskCurve final : public QWidget {
    Q_OBJECT
public:
    explicit RiskCurve(QWidget* parent = nullptr);

    void show(RiskOutlook outlook, Hours bid);
    QSize sizeHint() const override;

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    struct Scale;
    void paintArea(
        QPainter& painter, const Scale& scale, double from, double to, const QBrush& brush) const;
    void paintMark(
        QPainter& painter, const Scale& scale, double hours, const QString& words, int line) const;

    RiskOutlook m_outlook;
    double m_bid = 0;
};

} // namespace miterbook
