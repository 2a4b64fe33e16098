// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/result.h"
#include "book/shop.h"
#include "papers/paper.h"
#include "printing/paper_painter.h"

#include <QByteArray>
#include <QString>

class QWidget;

namespace miterbook {

/// Writes a paper as what the path ends with: .pdf, .csv, .json or .txt. Error: another ending, or
/// a path that cannot be written.
Result<void> exportPaper(
    const Paper& paper, PageSize size, const QString& path, const PaperBelow& below = {});

/// Writes a file whole or not at all. Errors name the path and why.
Result<void> writeWholeFile(const QString& path, const QByteArray& bytes);

/// Asks where to, exports, and says in a dialog what went wrong.
void savePaperAs(QWidget* parent, const Paper& paper, PageSize size, const PaperBelow& below = {});

/// An error's sentence in a dialog, as plain text.
void showPaperError(QWidget* parent, const Error& error);

} // namespace miterbook
