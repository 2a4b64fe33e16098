// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "plan/opening.h"
#include "plan/outline.h"

#include <optional>

namespace miterbook {

/// The farthest that two faces of one wall are apart.
inline constexpr Length thickestBetween = Length::inches(16);

/// A place in a wall of a drawn room.
struct WallPlace {
    std::size_t wall = 0; ///< from 0
    Length along;         ///< from the wall's first corner
    Length off;           ///< how far from the wall's face: into the room where negative

    bool operator==(const WallPlace&) const = default;
};

/// The point on a wall's face that far along it.
PlanPoint pointOn(const Outline& outline, std::size_t wall, Length along);

/// The place in the nearest wall to a point.
std::optional<WallPlace> nearestWall(const Outline& outline, PlanPoint point);

/// Where an opening in a wall of `own` stands in a wall of `other`: in the wall that faces the
/// other way across the thickness of the wall between. None where there is no such wall there.
std::optional<WallPlace> across(const Outline& own, const WallPlace& place, const Outline& other);

/// Where an opening stands in the wall of its own room; none where that is not said or the room is
/// not drawn so.
std::optional<WallPlace> placeIn(const Room& room, const Opening& opening);

/// Where a door or cased opening stands in the room on its other side.
std::optional<WallPlace> placeInOther(
    const Room& room, const Room& otherRoom, const Opening& opening);

} // namespace miterbook
