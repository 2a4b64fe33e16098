// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "stages/plan/place_columns.h"

#include <span>

namespace miterbook {

/// What matters of a door or cased opening.
std::span<const Column<Opening>> doorColumns();

} // namespace miterbook
