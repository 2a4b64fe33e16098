// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "stages/plan/place_columns.h"

#include <span>

namespace miterbook {

std::span<const Column<Level>> levelColumns();
std::span<const Column<Room>> roomColumns();

} // namespace miterbook
