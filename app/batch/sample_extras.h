// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "batch/sample_diary.h"
#include "batch/sample_house.h"

namespace miterbook {

/// Writes down what a house is asked for beyond its bid, and what is held against the shop: every
/// second house has an extra that is approved and done, with its hours; one in four one that nobody
/// has said yes to, and the first house underway has one too; one in six one that was dropped. The
/// second house has a backcharge that is accepted, the seventh one that is refused, the last one
/// that is claimed. The diary's acts live as long as `opened` and `draw`.
void planSampleExtras(SampleDiary& diary, OpenedBook& opened, SampleDraw& draw,
    const SampleHouse& house, bool isLast);

} // namespace miterbook
