// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/date.h"

#include <QRect>
#include <QString>
#include <QStringList>
#include <QWidget>

#include <vector>

class QPainter;

namespace miterbook {

/// Bars of days for each house, from Monday to Sunday above. Bars whose words would run into one
/// another stand in lines of their own. What it shows stands in the table beside it too.
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
    void resizeEvent(QResizeEvent* event) override;

private:
    /// A bar and its words where they are painted.
    struct Place {
        QRect box;
        QRect words;
        QString text;
    };
    void place();
    Place placeOf(const Bar& bar) const;
    int lineHeight() const;
    int nameWidth() const;
    double dayWidth() const;
    int xOf(Date day) const;
    void paintDays(QPainter& painter) const;
    void paintBar(QPainter& painter, const Bar& bar, const Place& place) const;

    std::vector<Bar> m_bars;
    std::vector<Place> m_places; ///< of each bar
    QStringList m_lines;
    std::vector<int> m_tops; ///< of each line of m_lines, and where the last one ends
    Date m_first{};
    Date m_last{};
    Date m_today{};
};

} // namespace miterbook
