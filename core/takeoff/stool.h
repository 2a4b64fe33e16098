// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "takeoff/opening_trim.h"

namespace miterbook {

/// Counts stool, apron and their returns for an opening that is `sill` wide at the bottom:
/// apron w + 2r + 2c, stool apron + 2 horns. A drywall return has an apron only where the opening
/// names a casing for it.
void takeStool(const OpeningTrim& trim, Length sill, Tally& tally);

} // namespace miterbook
