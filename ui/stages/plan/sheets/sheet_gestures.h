// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/edit.h"
#include "plan/drawing_scale.h"
#include "stages/plan/sheets/sheet_page.h"

namespace miterbook {

/// A file that was read and found good, to be copied into the book.
struct NewSheet {
    std::string name;
    Bytes content;
    int page = 1;
    Length scale; ///< what a unit is in the house, as far as the file says it
};

/// What a unit of a page is in the house: as the file says, else as drawn at 1/4" to the foot, else
/// so that the page is 60 ft wide until it is set to scale.
Length firstScale(const SheetPage& page);

/// A file copied into the book and laid under a level, its upper left corner at `at`. A file of the
/// same content that the plan has already is used again.
Result<Edit> sheetAdded(const Book& book, IdSource& ids, Id<Plan> plan, Id<Level> level,
    const NewSheet& sheet, PlanPoint at);
/// The sheet as it shall lie.
Edit sheetChanged(const Book& book, const Underlay& underlay, const std::string& what);
/// Taken away from under its level; its file goes with the last that uses it.
Edit sheetRemoved(const Book& book, const Underlay& underlay);

} // namespace miterbook
