// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "takeoff/casing_outline.h"
#include "takeoff/opening_trim.h"

namespace miterbook {

/// Counts the jamb extension of an opening whose wall is thicker than its frame: four sides for a
/// picture frame, else three (the stool or floor is the fourth), ripped to the depth. Legs are as
/// long as the jamb; head and sill run over the legs' ends. Nothing where no depth is known.
void takeExtension(const OpeningTrim& trim, const std::vector<OutlineSide>& outline, Tally& tally);

} // namespace miterbook
