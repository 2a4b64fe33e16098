// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/edit.h"

#include <string>
#include <string_view>

namespace miterbook {

/// Plan exchange text (`.miterplan`, described in sample-jobs/FORMAT.md): one plan with its
/// builder, plan set, the profiles it uses, everything on it, its elevations and options. The plan
/// must be open and in the book. Holds no id of the book; what a house costs or is bid at is not in
/// it, but what sticks of its profiles cost is.
std::string writePlanText(const Book& book, Id<Plan> plan);

/// The edit that brings a plan exchange text into the book as a new plan: "Bring in plan Larkspur".
/// A builder, plan set or profile that the book has under the same name is used as it is there.
/// Errors: one sentence with the place, "openings[3] W4: width: ..." (counted from 1), or the line
/// where the text is no JSON; a key that means nothing; a text of a newer version (Fault::notOurs);
/// a plan that the builder has already (Fault::conflict).
Result<Edit> readPlanText(const Book& book, IdSource& ids, std::string_view text);

} // namespace miterbook
