// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QProxyStyle>

namespace miterbook {

/// The desktop's own style with more room beside what stands in the cells of tables: a number at
/// the right of its cell and a word at the left of the next must not run together.
class TableStyle final : public QProxyStyle {
public:
    int pixelMetric(PixelMetric metric, const QStyleOption* option = nullptr,
        const QWidget* widget = nullptr) const override;
};

} // namespace miterbook
