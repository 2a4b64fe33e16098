// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "takeoff/tally.h"

namespace miterbook {

/// Counts area, boards and cap of one wall treatment. Shiplap: courses of the face height said.
/// Board and batten, wainscot: uprights at the spacing said, both ends included; wainscot also a
/// top and a bottom rail.
void takeTreatment(const WallTreatment& treatment, Tally& tally);

/// Counts any other work: its labour, its material by length and its goods.
void takeOtherWork(const OtherWork& other, Tally& tally);

} // namespace miterbook
