// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/date.h"
#include "charts/chart_picture.h"

#include <vector>

namespace miterbook {

/// One line of a picture over time.
struct PictureLine {
    enum class Look { line, dashed, dotted, dots };
    QString name;
    Look look = Look::line;
    std::vector<std::pair<Date, double>> points;
};

/// The room between two lines, as an interval.
struct PictureBand {
    QString name;
    std::vector<Date> days;
    std::vector<double> low;
    std::vector<double> high;
};

/// Lines over days, with a band behind them where something is not certain.
class LinePicture final : public ChartPicture {
    Q_OBJECT
public:
    using ChartPicture::ChartPicture;

    /// `words` says in a sentence what is to be seen.
    void setLines(const QString& title, const QString& axis, const std::vector<PictureLine>& lines,
        const PictureBand& band, const QString& words);

protected:
    std::unique_ptr<ChartPicture> inInk() const override;

private:
    void addBand(const PictureBand& band);
    void addLine(const PictureLine& line);

    // As it was made, to be made again in ink.
    QString m_axis;
    std::vector<PictureLine> m_lines;
    PictureBand m_band;
};

} // namespace miterbook
