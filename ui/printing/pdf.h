// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/result.h"
#include "book/shop.h"
#include "papers/paper.h"
#include "printing/paper_painter.h"

#include <QByteArray>
#include <QString>

namespace miterbook {

/// The paper as a PDF. Error: no font to print with.
Result<QByteArray> paperPdf(const Paper& paper, PageSize size, const PaperBelow& below = {});

/// Writes the paper as a PDF. A file that is there is replaced only when the new one is whole.
/// Errors name the path and why it cannot be written.
Result<void> writePdf(
    const Paper& paper, PageSize size, const QString& path, const PaperBelow& below = {});

} // namespace miterbook
