// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/length_text.h"
#include "basics/quantity.h"
#include "basics/result.h"
#include "plan/point.h"
#include "plan/room.h"

#include <optional>

namespace miterbook {

/// Points farther from the plan's zero than this are refused.
inline constexpr Length farthestPoint = longestSensible;
/// The most corners that one room may have.
inline constexpr std::size_t mostCorners = 200;

/// Whether a point is no farther off than that.
bool isNearZero(const PlanPoint& point);

/// Distance between two points, to the nearest nanometre; exact along an axis.
Length distance(PlanPoint a, PlanPoint b);
/// Of a line through points in order, not closed.
Length pathLength(const std::vector<PlanPoint>& points);
/// What an outline encloses, by the shoelace sum, whichever way round it is.
Quantity areaOf(const Outline& outline);
/// Whether it goes clockwise as seen on the sheet.
bool isClockwise(const Outline& outline);
/// Whether a point is inside or on the edge.
bool encloses(const Outline& outline, PlanPoint point);

/// Refuses an outline of under three or too many corners, with a corner that is none (two at one
/// place, or no turn), that doubles back, or whose walls cross or touch. The sentence begins with
/// `name`.
Result<void> checkOutline(const Outline& outline, const std::string& name);

/// What of a clockwise outline lies farther than `by` from all of its walls, each wall moved
/// inward; nothing where that is no outline of as many corners any more: it is too narrow there.
std::optional<Outline> insetBy(const Outline& outline, Length by);

/// The same corners, clockwise, without those in which the wall does not turn.
Outline tidied(Outline outline);

/// The walls of an outline that checkOutline passes, with lengths, corners and angles to the
/// hundredth of a degree; base, crown and shoe as in `like` where it has as many walls.
std::vector<Wall> wallsOf(const Outline& outline, const std::vector<Wall>& like = {});

/// Whether walls are those of the outline.
bool agree(const std::vector<Wall>& walls, const Outline& outline);

/// Walls laid out from `start`, the first one in the direction of `heading` (degrees, clockwise on
/// the sheet from the x axis); nothing when they are open or miss coming round by over `tolerance`.
std::optional<Outline> layOut(const std::vector<Wall>& walls, PlanPoint start, double heading = 0,
    Length tolerance = Length::inches(1));

/// The direction of a wall of an outline, degrees as above.
double headingOf(const Outline& outline, std::size_t wall);

/// Gives a room an outline and the walls that follow from it. Errors: as checkOutline.
Result<void> setOutline(Room& room, Outline outline);

/// Gives a room walls as typed. A drawn room is drawn anew from its first corner, or keeps its
/// outline where only base, crown or shoe of walls change. Errors: walls of a drawn room that do
/// not come round.
Result<void> setWalls(Room& room, std::vector<Wall> walls);

} // namespace miterbook
