// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "cut/walking.h"
#include "job/edit.h"

namespace miterbook {

/// Where the saw stands on a level of a house's plan; nullptr where nobody has said.
const SawSpot* sawSpotOn(const Book& book, Id<Plan> plan, Id<Level> level);

/// Puts the saw there. Error on a builder's plan, which nobody cuts for.
Result<Edit> sawSpotEdit(
    const Book& book, IdSource& ids, Id<Plan> plan, Id<Level> level, Spot spot);

/// Takes the saw away; empty where none stands.
Edit noSawSpotEdit(const Book& book, Id<Plan> plan, Id<Level> level);

} // namespace miterbook
