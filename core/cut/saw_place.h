// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "cut/walking.h"
#include "plan/whole_plan.h"

#include <optional>

namespace miterbook {

/// Where the saw stands best on a level, and what is walked from there with sets and back.
struct SawPlace {
    Id<Room> room;
    Spot spot;
    Length walked;

    bool operator==(const SawPlace&) const = default;
};

/// The best spot in any drawn room of the level that a saw can stand in: not in closets, pantries,
/// baths and stairs, and 3 ft from its walls where the room is wide enough. Each placed opening
/// with trim is walked to once for each set. Nothing where nothing is drawn or placed.
std::optional<SawPlace> sawPlaceOn(const WholePlan& whole, Id<Level> level);

/// What is walked with sets and back from a spot on a level; nothing where no opening is placed.
std::optional<Length> walkedFrom(const WholePlan& whole, Id<Level> level, Spot spot);

} // namespace miterbook
