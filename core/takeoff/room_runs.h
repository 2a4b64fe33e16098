// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "takeoff/wall_lengths.h"

namespace miterbook {

/// Counts base, shoe, chair rail and crown of one room: pieces, corners and labour.
void takeRoom(const Room& room, const DoorGaps& gaps, Tally& tally);

/// Says once what the plan itself leaves out: no base or crown profile though rooms go by the plan.
void checkPlanRuns(Tally& tally);

} // namespace miterbook
