// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "widgets/column.h"
#include "widgets/table_spec.h"

#include <QVariant>

namespace miterbook {

bool isNumber(CellKind kind);
/// Numbers to the right, everything else to the left.
QVariant alignmentOf(CellKind kind);
/// Struck through when removed, italic when a variant added or changed the row.
QVariant fontOf(RowMark mark);
/// Quiet where the row is removed; nothing otherwise.
QVariant inkOf(RowMark mark);
/// What a screen reader adds to the text of a row's cell: "removed".
QString wordOf(RowMark mark);

} // namespace miterbook
