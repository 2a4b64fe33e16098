// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "book/shop.h"

#include <QPageSize>
#include <QPagedPaintDevice>

namespace miterbook {

QPageSize pageSizeOf(PageSize size);

/// Sets a device to a portrait page of the size with the margins of our papers. To be called before
/// painting begins, and again after a print dialog: it brings in the printer's own default.
void setPage(QPagedPaintDevice& device, PageSize size);

} // namespace miterbook
