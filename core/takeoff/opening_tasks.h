// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "takeoff/casing.h"

namespace miterbook {

/// Counts the labour of one opening: its main task, long sides, corners that are not square, mulls.
void takeOpeningTasks(const OpeningTrim& trim, const std::vector<OutlineSide>& outline,
    const LongSides& longSides, Tally& tally);

/// Counts lockset, deadbolt and stop: the goods and their fitting.
void takeHardware(const OpeningTrim& trim, Tally& tally);

} // namespace miterbook
