// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "takeoff/tally.h"

namespace miterbook {

/// A run divided into what comes out of sticks.
struct SplicedRun {
    std::vector<Length> pieces; ///< in order along the run, scarf allowances included
    int splices = 0;            ///< the other joints fall behind a casing and need none
};

/// Divides a run so that no piece is longer than `longest` (0: unknown, never divided). `breaks`
/// says where it may end without a splice (doors in the wall). Each splice adds `scarf`. One splice
/// per extra stick.
SplicedRun spliceRun(Length run, Length longest, Length scarf, int breaks);

/// Adds a plain square-ended run of `piece`'s profile, spliced with a warning where no stick is
/// long enough. The piece's lengths and ends are set here.
void addRun(Piece piece, Length run, Tally& tally);

} // namespace miterbook
