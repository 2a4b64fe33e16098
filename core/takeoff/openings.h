// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "takeoff/tally.h"

namespace miterbook {

/// Counts everything of one window, door or cased opening.
void takeOpening(const Opening& opening, Tally& tally);

} // namespace miterbook
