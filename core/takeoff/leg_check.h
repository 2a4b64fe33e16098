// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "takeoff/opening_trim.h"

namespace miterbook {

/// What a leg from the floor has more than the opening's height: later flooring under a leg that
/// runs to the subfloor, less the gap kept off the floor. Zero for windows.
Length legStanding(const Opening& opening, const Practice& practice);

/// Warns of a leg that is longer than the shop's legs, or of which two do not come out of a stocked
/// stick of twice that length. `said` keeps both legs of an opening from being warned of.
void checkLeg(const OpeningTrim& trim, const Piece& leg, bool& said, Tally& tally);

} // namespace miterbook
