// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "plan/point.h"

#include <optional>
#include <vector>

namespace miterbook {

/// What a point that is being set is drawn to.
struct SnapTo {
    std::vector<const Outline*> others; ///< rooms of the level
    std::vector<PlanPoint> before;      ///< corners set so far of the outline being drawn
    Length wall;                        ///< between two rooms: their faces are this far apart
    Length reach;                       ///< how near a line must be to draw the point to it
    Length step;                        ///< where no line is near: to whole steps of this
};

/// A point and the lines that it was drawn to.
struct Snapped {
    PlanPoint point;
    bool toX = false; ///< to a line up the sheet
    bool toY = false; ///< to a line across it

    bool operator==(const Snapped&) const = default;
};

/// Draws a point to the corners and faces of other rooms, to what stands a wall's thickness before
/// them, and to right angles with the corners set before; each direction by itself, the nearest
/// line first. Where no line is near, to the step.
Snapped snapped(PlanPoint point, const SnapTo& to);

/// How far an outline that is moved as a whole is to go besides `by`, so that one of its faces
/// meets a face of others or stands a wall's thickness before it.
PlanPoint snappedMove(const Outline& outline, PlanPoint by, const SnapTo& to);

} // namespace miterbook
