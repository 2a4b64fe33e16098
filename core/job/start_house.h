// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/edit.h"

#include <string>

namespace miterbook {

/// What is said when a house is started from a plan.
struct HouseStart {
    Id<Plan> plan; ///< an opened plan of a builder
    Selection selection;
    std::string name;
    std::string lot;
    std::string address;
    Date started = noDate;
};

/// The edit that starts a house: the House row and its own copy of the whole plan as selected and
/// of the plan's bid setup, with new ids. Errors: no name, a name already taken, a plan that is not
/// in the book or not open or a house's own, an elevation or option that the plan does not have.
Result<Edit> startHouse(const Book& book, IdSource& ids, const HouseStart& start);

/// The edit that removes a plan or a house's copy with everything below it. The plan must be open.
Edit removePlan(const Book& book, Id<Plan> plan);

/// The edit that removes a house and its copy of the plan, which must be open.
Edit removeHouse(const Book& book, Id<House> house);

} // namespace miterbook
