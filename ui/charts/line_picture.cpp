// SPDX-License-Identifier: GPL-3.0-or-later
#include "charts/line_picture.h"

#include <QAreaSeries>
#include <QChart>
#include <QDateTimeAxis>
#include <QLegend>
#include <QLineSeries>
#include <QScatterSeries>
#include <QTimeZone>
#include <QValueAxis>

#include <algorithm>

namespace miterbook {

namespace {

qreal msecsOf(Date day) {
    return static_cast<qreal>(std::chrono::duration_cast<std::chrono::milliseconds>(
        std::chrono::sys_days(day).time_since_epoch())
                                  .count());
}

QDateTime whenOf(qreal msecs) {
    return QDateTime::fromMSecsSinceEpoch(static_cast<qint64>(msecs), QTimeZone::utc());
}

/// The days that a picture spans, a day at least.
struct PictureSpan {
    qreal first = 0;
    qreal last = 0;
    bool any = false;
    double highest = 0;

    void take(Date day, double value) {
        const qreal at = msecsOf(day);
        first = any ? std::min(first, at) : at;
        last = any ? std::max(last, at) : at;
        highest = std::max(highest, value);
        any = true;
    }
};

/// At each end and between, but no day twice.
int ticksOver(const PictureSpan& span) {
    constexpr qreal day = 86'400'000;
    return std::clamp(static_cast<int>((span.last - span.first) / day) + 1, 2, 5);
}

PictureSpan spanOf(const std::vector<PictureLine>& lines, const PictureBand& band) {
    PictureSpan span;
    for (const PictureLine& line : lines) {
        for (const auto& [day, value] : line.points)
            span.take(day, value);
    }
    for (std::size_t i = 0; i < band.days.size(); ++i)
        span.take(band.days[i], band.high[i]);
    constexpr qreal day = 86'400'000;
    if (span.last - span.first < day)
        span.last = span.first + day;
    return span;
}

} // namespace

void LinePicture::addBand(const PictureBand& band) {
    if (band.days.empty())
        return;
    auto* low = new QLineSeries(chart());
    auto* high = new QLineSeries(chart());
    for (std::size_t i = 0; i < band.days.size(); ++i) {
        low->append(msecsOf(band.days[i]), band.low[i]);
        high->append(msecsOf(band.days[i]), band.high[i]);
    }
    auto* area = new QAreaSeries(high, low);
    area->setName(band.name);
    QColor fill = ink();
    fill.setAlphaF(0.15F);
    area->setBrush(fill);
    area->setPen(Qt::NoPen);
    chart()->addSeries(area);
}

void LinePicture::addLine(const PictureLine& line) {
    QXYSeries* series = nullptr;
    if (line.look == PictureLine::Look::dots) {
        auto* dots = new QScatterSeries;
        dots->setMarkerShape(QScatterSeries::MarkerShapeRotatedRectangle);
        dots->setMarkerSize(9);
        dots->setBorderColor(ink());
        dots->setColor(ground());
        series = dots;
    } else {
        series = new QLineSeries;
        const Qt::PenStyle style = line.look == PictureLine::Look::dotted ? Qt::DotLine
                                                                          : Qt::DashLine;
        const bool plain = line.look == PictureLine::Look::line;
        series->setPen(plain ? QPen(accent(), 2.5) : QPen(ink(), 1.5, style));
    }
    series->setName(line.name.toHtmlEscaped());
    for (const auto& [day, value] : line.points)
        series->append(msecsOf(day), value);
    chart()->addSeries(series);
}

void LinePicture::setLines(const QString& title, const QString& axis,
    const std::vector<PictureLine>& lines, const PictureBand& band, const QString& words) {
    m_axis = axis;
    m_lines = lines;
    m_band = band;
    clear();
    addBand(band);
    for (const PictureLine& line : lines)
        addLine(line);
    const PictureSpan span = spanOf(lines, band);
    auto* across = new QDateTimeAxis;
    across->setFormat(QStringLiteral("d MMM yy"));
    across->setRange(whenOf(span.first), whenOf(span.last));
    across->setTickCount(ticksOver(span));
    auto* up = new QValueAxis;
    up->setTitleText(axis.toHtmlEscaped());
    up->setRange(0, span.highest > 0 ? span.highest * 1.05 : 1);
    chart()->addAxis(across, Qt::AlignBottom);
    chart()->addAxis(up, Qt::AlignLeft);
    for (QAbstractSeries* series : chart()->series()) {
        series->attachAxis(across);
        series->attachAxis(up);
    }
    up->applyNiceNumbers();
    chart()->legend()->setVisible(true);
    finish(title, words);
}

std::unique_ptr<ChartPicture> LinePicture::inInk() const {
    auto other = std::make_unique<LinePicture>(accessibleName());
    other->useInk();
    other->setLines(title(), m_axis, m_lines, m_band, words());
    return other;
}

} // namespace miterbook
