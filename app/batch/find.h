// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/book.h"

#include <string>
#include <vector>

namespace miterbook {

/// The builder's plan of a name. Errors: none of that name (the names there are), or more than one
/// (then "Builder / Plan" tells which).
Result<Id<Plan>> findPlan(const Book& book, const std::string& name);

/// The house of a name.
Result<Id<House>> findHouse(const Book& book, const std::string& name);

/// A plan's elevation and options by name. The plan must be open.
Result<Selection> findSelection(const Book& book, Id<Plan> plan, const std::string& elevation,
    const std::vector<std::string>& options);

/// A level of an opened plan by name.
Result<Id<Level>> findLevel(const Book& book, Id<Plan> plan, const std::string& name);

/// "Builder / Plan" where the plan has a builder, else the plan's name.
std::string planTitle(const Book& book, const Plan& plan);

} // namespace miterbook
