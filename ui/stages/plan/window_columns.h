// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "stages/plan/place_columns.h"

#include <span>

namespace miterbook {

/// A width that also takes a whole size: `3068` or `36 x 60` sets the height too.
Result<void> putWidthOrSize(Opening& opening, const QString& typed, const Book& book);
Result<void> putDoorHeight(Opening& opening, const QString& typed, const Book& book);

/// What matters of a window, in the order it is read off a plan.
std::span<const Column<Opening>> windowColumns();

} // namespace miterbook
