// SPDX-License-Identifier: GPL-3.0-or-later
#include "printing/page_size.h"

#include <QPageLayout>

namespace miterbook {

QPageSize pageSizeOf(PageSize size) {
    return QPageSize(size == PageSize::a4 ? QPageSize::A4 : QPageSize::Letter);
}

void setPage(QPagedPaintDevice& device, PageSize size) {
    // Points: 3/4 in at the sides, a little less above and below.
    const QMarginsF margins(54, 50, 54, 44);
    device.setPageLayout(
        QPageLayout(pageSizeOf(size), QPageLayout::Portrait, margins, QPageLayout::Point));
}

} // namespace miterbook
