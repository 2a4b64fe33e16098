// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "takeoff/tally.h"

namespace miterbook {

/// What seems forgotten of one opening, as warnings in the tally.
void lookAtOpening(const Opening& opening, Tally& tally);

/// Marks that stand on more than one row of the same level.
void lookAtMarks(Tally& tally);

} // namespace miterbook
