// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "stages/plan/drawing/plan_picture.h"

namespace miterbook {

/// Adds to a picture what variants do that are looked at but not changed: rows of the level are
/// marked changed or removed, what is added or stands elsewhere is drawn apart. Of what the target
/// itself has elsewhere than the base plan, the place in the base plan is drawn apart. Counts all.
void addDifferences(
    PlanPicture& picture, const DrawnLevel& level, const std::vector<Id<Variant>>& seen);

} // namespace miterbook
