// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "charts/chart_picture.h"

#include <vector>

namespace miterbook {

struct PictureBar {
    QString name;
    double value = 0;
    QString said; ///< the value in words, for who cannot see the bar

    bool operator==(const PictureBar&) const = default;
};

/// Bars lying one below the other, in the order given from the top; what is below zero points the
/// other way and is hatched.
class BarPicture final : public ChartPicture {
    Q_OBJECT
public:
    using ChartPicture::ChartPicture;

    /// `above` and `below` name what is over and under zero.
    void setBars(const QString& title, const QString& axis, const QString& above,
        const QString& below, const std::vector<PictureBar>& bars);

protected:
    std::unique_ptr<ChartPicture> inInk() const override;

private:
    // As it was made, to be made again in ink.
    QString m_axis;
    QString m_above;
    QString m_below;
    std::vector<PictureBar> m_bars;
};

} // namespace miterbook
