// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QList>
#include <QString>
#include <QStringList>

namespace miterbook {

/// A block of cells as a spreadsheet puts it on the clipboard: lines of tab-parted cells, a cell
/// with tabs, quotes or line ends in quotes. Text that would start a formula goes out with an
/// apostrophe before it, and comes in without.
using CellBlock = QList<QStringList>;

QString writeCellBlock(const CellBlock& block);
/// Reads any text; a trailing line end makes no empty line.
CellBlock readCellBlock(const QString& tabbed);

} // namespace miterbook
