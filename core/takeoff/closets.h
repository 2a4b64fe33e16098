// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "takeoff/tally.h"

namespace miterbook {

/// Counts shelves, rods, cleats (back and both ends), brackets and labour of one closet.
void takeCloset(const Closet& closet, Tally& tally);

} // namespace miterbook
