// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "takeoff/tally.h"

namespace miterbook {

/// What seems wrong on the drawing, as warnings in the tally: openings that stand in one another or
/// past the end of their wall, rooms that lie over each other, openings forgotten when rooms were
/// drawn. A plan that is not drawn has none.
void lookAtPlaces(Tally& tally);

} // namespace miterbook
