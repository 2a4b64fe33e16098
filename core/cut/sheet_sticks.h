// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "cut/saw_sheet.h"

namespace miterbook {

/// Gives every piece without a stick (0) its stick: first what sticks already begun have left, then
/// sticks on hand, so that as little length as possible is begun. New sticks are numbered on from
/// those kept, in the order of the stops at which they are taken up. Pieces that no stick is left
/// for keep 0. Returns the sticks that were given pieces.
std::vector<SheetStick> giveSticks(std::vector<SheetPiece>& pieces, const SawJob& job);

/// The sticks of pieces that have one, by number, with what each has left: those kept in the book
/// and those `given` just now. What spoiled pieces took of a stick is gone.
std::vector<SheetStick> sticksOf(
    const std::vector<SheetPiece>& pieces, const std::vector<SheetStick>& given, const SawJob& job);

/// A sentence for each profile that runs short: how many pieces find no stick and what would do.
std::vector<std::string> shortages(const std::vector<SheetPiece>& pieces, const PriceBook& prices);

} // namespace miterbook
