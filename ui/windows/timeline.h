// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/date.h"

#include <QString>
#include <QStringList>
#include <QWidget>

#include <vector>

class QPainter;

namespace miterbook {

/// Bars of days, a line for each house, from Monday to Sunday above. What it shows stands in the
/// table beside it too.
class Timeline final : public QWidget {
    Q_OBJECT
public:
    struct Bar {
        QString line; ///< the house
        QString text;
        Date from;
        Date to;
        bool clashes = false; ///< hatched, and said so

        bool operator==(const Bar&) const = default;
    };

    explicit Timeline(QWidget* parent = nullptr);

    /// Bars in the order of their lines; `today` is marked.
    void setBars(std::vector<Bar> bars, Date today);
    QSize sizeHint() const override;
    QSize minimumSizeHint() const override;

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    int lineHeight() const;
    int nameWidth() const;
    double dayWidth() const;
    int xOf(Date day) const;
    void paintDays(QPainter& painter) const;
    void paintBar(QPainter& painter, const Bar& bar, int top) const;

    std::vector<Bar> m_bars;
    QStringList m_lines;
    Date m_first{};
    Date m_last{};
    Date m_today{};
};

} // namespace miterbook
