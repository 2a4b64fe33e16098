// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "takeoff/takeoff.h"

namespace miterbook {

/// How a run ends at one end of a wall, and what that does to the length of its piece.
struct RunEnd {
    PieceEnd end;
    Length longer;        ///< long point beyond the wall (outside corners)
    Length shorter;       ///< short point within the wall (mitered inside corners)
    bool counted = false; ///< a corner of the run
};

/// The far end of a wall that meets the next one in `corner`.
RunEnd farEnd(const Profile& profile, const Wall& corner);
/// The near end of the wall after `corner`: where a coped joint has its cope.
RunEnd nearEnd(const Profile& profile, const Wall& corner);

} // namespace miterbook
