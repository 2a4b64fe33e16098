// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "stages/plan/place_columns.h"

#include <span>

namespace miterbook {

std::span<const Column<Closet>> closetColumns();
std::span<const Column<Stair>> stairColumns();
std::span<const Column<WallTreatment>> treatmentColumns();
std::span<const Column<OtherWork>> otherWorkColumns();

} // namespace miterbook
