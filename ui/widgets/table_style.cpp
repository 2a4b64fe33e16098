// SPDX-License-Identifier: GPL-3.0-or-later
#include "widgets/table_style.h"

#include <QHeaderView>
#include <QTableView>

namespace miterbook {

namespace {

constexpr int more = 3; // pixels at each side of a cell

} // namespace

int TableStyle::pixelMetric(
    PixelMetric metric, const QStyleOption* option, const QWidget* widget) const {
    const int usual = QProxyStyle::pixelMetric(metric, option, widget);
    if (metric == PM_FocusFrameHMargin && qobject_cast<const QTableView*>(widget))
        return usual + more;
    if (metric == PM_HeaderMargin && qobject_cast<const QHeaderView*>(widget))
        return usual + more - 1; // it begins one wider
    return usual;
}

} // namespace miterbook
