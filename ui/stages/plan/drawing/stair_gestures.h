// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "plan/flight.h"
#include "stages/plan/drawing/drawn_level.h"

namespace miterbook {

// What is done to stairs on the drawing, each one edit. Errors: the sentence that the user reads.

/// A stair from its foot to its head. `chosen`, a stair of the plan that has no place yet, gets it;
/// else there is a new stair, in the room at its foot.
Result<Edit> stairDrawn(const DrawnLevel& level, IdSource& ids, std::optional<std::int64_t> chosen,
    std::vector<PlanPoint> walkLine);
/// The width of its flights.
Result<Edit> stairWidened(const DrawnLevel& level, IdSource& ids, std::int64_t stair, Length width);

} // namespace miterbook
