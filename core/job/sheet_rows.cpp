// SPDX-License-Identifier: GPL-3.0-or-later
#include "job/sheet_rows.h"

namespace miterbook {

SheetRows::SheetRows() = default;
SheetRows::SheetRows(const SheetRows&) = default;
SheetRows::SheetRows(SheetRows&&) noexcept = default;
SheetRows& SheetRows::operator=(const SheetRows&) = default;
SheetRows& SheetRows::operator=(SheetRows&&) noexcept = default;
SheetRows::~SheetRows() = default;
bool SheetRows::operator==(const SheetRows&) const = default;

} // namespace miterbook
