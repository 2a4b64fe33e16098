// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/cut_figures.h"
#include "job/edit.h"

namespace miterbook {

/// Brings pieces (places on the sheet) to a state: "Mark 4 pieces cut".
Edit tickEdit(const Book& book, IdSource& ids, Id<Plan> plan, const SawSheet& sheet,
    const std::vector<std::size_t>& pieces, PieceState state);

/// Keeps the numbers of the sheet of a level, or of all, for the paper that is hung at the saw.
/// Empty when all are kept.
Edit keepNumbersEdit(
    const Book& book, IdSource& ids, Id<Plan> plan, const SawSheet& sheet, Id<Level> level);

/// Gives openings that have not been measured the plan's sizes to start from.
Edit planSizesEdit(const Book& book, IdSource& ids, Id<Plan> plan,
    const std::vector<OpeningUnit>& units, Id<Level> level);

/// Takes the test cuts away: tape or fence has been set anew.
Edit forgetTestsEdit(const Book& book, Id<Plan> plan);

} // namespace miterbook
