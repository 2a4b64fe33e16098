// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/edit.h"

#include <string>

namespace miterbook {

/// What is said when a plan is begun.
struct NewPlan {
    std::string builder; ///< by name; made when the book has none of that name
    std::string set;     ///< plan set of that builder; empty: the builder's first, made when none
    std::string name;
    int floorArea = 0; ///< square feet; 0: not said
};

/// The edit that begins an empty plan with one level, "Main level". Its profiles are the book's
/// first painted one of each use. Errors: no builder or plan name, a plan of that name in the set
/// already.
Result<Edit> newPlan(const Book& book, IdSource& ids, const NewPlan& wanted);

/// The builder's plan of a name; none when there is none.
Id<Plan> planOfBuilder(const Book& book, std::string_view builder, std::string_view plan);

} // namespace miterbook
