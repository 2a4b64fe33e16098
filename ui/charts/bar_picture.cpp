// SPDX-License-Identifier: GPL-3.0-or-later
#include "charts/bar_picture.h"

#include <QBarCategoryAxis>
#include <QBarSet>
#include <QChart>
#include <QHorizontalStackedBarSeries>
#include <QLegend>
#include <QValueAxis>

#include <algorithm>

namespace miterbook {

namespace {

constexpr std::size_t mostBars = 25; // more cannot be read; the table has them all

} // namespace

void BarPicture::setBars(const QString& title, const QString& axis, const QString& above,
    const QString& below, const std::vector<PictureBar>& bars) {
    m_axis = axis;
    m_above = above;
    m_below = below;
    m_bars = bars;
    clear();
    auto* over = new QBarSet(above);
    auto* under = new QBarSet(below);
    over->setBrush(accent());
    under->setBrush(QBrush(ink(), Qt::BDiagPattern));
    for (QBarSet* set : {over, under})
        set->setPen(QPen(ink(), 1));
    QStringList names;
    QStringList said;
    const std::size_t count = std::min(bars.size(), mostBars);
    for (std::size_t i = count; i-- > 0;) { // the axis counts from below
        const PictureBar& bar = bars[i];
        over->append(std::max(bar.value, 0.0));
        under->append(std::min(bar.value, 0.0));
        QString name = bar.name;
        while (names.contains(name.toHtmlEscaped()))
            name += u' ';              // two of one name are two bars
        names << name.toHtmlEscaped(); // painted as rich text by Qt
    }
    for (std::size_t i = 0; i < count; ++i)
        said << bars[i].name + QStringLiteral(": ") + bars[i].said;
    auto* series = new QHorizontalStackedBarSeries;
    series->append(over);
    series->append(under);
    series->setBarWidth(0.7);
    chart()->addSeries(series);
    auto* across = new QValueAxis;
    auto* down = new QBarCategoryAxis;
    down->append(names);
    chart()->addAxis(down, Qt::AlignLeft);
    chart()->addAxis(across, Qt::AlignBottom);
    series->attachAxis(down);
    series->attachAxis(across);
    across->setTitleText(axis.toHtmlEscaped());
    across->applyNiceNumbers();
    if (across->max() - across->min() >= 100)
        across->setLabelFormat(QStringLiteral("%.0f"));
    const bool both = std::ranges::any_of(bars, [](const auto& bar) { return bar.value < 0; });
    chart()->legend()->setVisible(both);
    finish(title, title + QStringLiteral(". ") + said.join(QStringLiteral("; ")));
}

std::unique_ptr<ChartPicture> BarPicture::inInk() const {
    auto other = std::make_unique<BarPicture>(accessibleName());
    other->useInk();
    other->setBars(title(), m_axis, m_above, m_below, m_bars);
    return other;
}

} // namespace miterbook
