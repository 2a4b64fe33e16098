// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "takeoff/tally.h"

namespace miterbook {

/// Counts skirts, treads and risers (flights of 14 risers), rail, newels and balusters of one
/// stair.
void takeStair(const Stair& stair, Tally& tally);

} // namespace miterbook
