// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/tables.h"
#include "plan/fittings.h"
#include "plan/opening.h"
#include "plan/plan.h"
#include "plan/room.h"
#include "plan/sheets.h"

namespace miterbook {

/// Everything that hangs on one plan, base rows and the rows of its variants together.
using PlanRows = Tables<Variant, Swap, Level, Room, Opening, Closet, Stair, WallTreatment,
    OtherWork, SheetFile, Underlay, Dismissal>;

/// Rows that a variant can add, change or take away.
template <class Row>
concept Overlaid = requires(Row row) {
    row.variant;
    row.replaces;
    row.removed;
    row.position;
};

} // namespace miterbook
