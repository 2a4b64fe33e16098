// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "takeoff/tally.h"

namespace miterbook {

/// What seems forgotten of the plan's rooms, fittings and levels, as warnings in the tally.
void lookAtRooms(Tally& tally);
void lookAtClosets(Tally& tally);
void lookAtLevels(Tally& tally);

} // namespace miterbook
