// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "cut/saw_sheet.h"

namespace miterbook {

/// Gives every piece without a stop (0) its stop: one that is there already and serves it, else the
/// fewest new ones, numbered on from `lastNumber` in the order of the sheet. Sets their lengths.
void giveStops(std::vector<SheetPiece>& pieces, const SawJob& job, int lastNumber);

/// The stops of pieces that have one, by level and profile, longest first.
std::vector<SheetStop> stopsOf(const std::vector<SheetPiece>& pieces, const WholePlan& whole);

} // namespace miterbook
