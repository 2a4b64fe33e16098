// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "plan/plan_rows.h"

#include "basics/result.h"

#include <string>

namespace miterbook {

/// The n-th new mark (from 0) after those the plan has: W19, D7.
std::string newOpeningMark(const PlanRows& rows, bool window, int n);
/// 101 for the first room, then one more than the highest number.
std::string newRoomMark(const PlanRows& rows, int n);
/// A new opening is trimmed as the last of its kind was; only size and place are new.
void beginOpening(Opening& opening, const PlanRows& rows, bool window, int n);
/// "window W4", "bifold door D7".
std::string openingTitle(const Opening& opening);
/// Whether an opening may be kept as typed: sizes may still be missing. Errors: a sentence.
Result<void> checkTyped(const Opening& opening, const PlanRows& rows);

} // namespace miterbook
