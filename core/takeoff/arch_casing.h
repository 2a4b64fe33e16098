// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "takeoff/geometry.h"
#include "takeoff/opening_trim.h"

namespace miterbook {

/// The casing leg under an arched head. `standing` is what the leg has more than the height; a
/// framed leg is mitered to the sill below.
ArchLeg archLegOf(const OpeningTrim& trim, Length standing, bool framed);

/// Counts the arched casing as a made part to order, and says what to order.
void orderArch(const OpeningTrim& trim, Tally& tally);

} // namespace miterbook
