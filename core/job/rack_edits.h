// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "cut/saw_sheet.h"
#include "job/edit.h"

namespace miterbook {

/// Adds to an edit that puts `rows` of a house's saw sheet what they mean for the shop's rack: an
/// offcut that is begun is taken off it, one of which nothing is cut any more goes back, and what a
/// stick had left comes out again where a piece of it is to be cut after all.
void keepRack(EditBuilder& edit, IdSource& ids, Id<Plan> plan, const std::vector<CutPiece>& rows);

/// Puts what sticks have left of which everything is cut into the rack, where it is as long as the
/// shop keeps: "Put 4 remainders in the rack". Lengths are rounded down to what a tape shows. Empty
/// where there is none.
Edit putAwayEdit(const Book& book, IdSource& ids, Id<Plan> plan, const SawSheet& sheet);

} // namespace miterbook
