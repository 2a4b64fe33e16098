// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "plan/fittings.h"

namespace miterbook {

/// A stair as it is drawn on the level that it climbs from; empty where it has no place there.
struct FlightDrawing {
    struct Riser {
        PlanPoint a;
        PlanPoint b;
        bool above = false; ///< beyond where a plan is cut: drawn, but not by a full line
    };
    std::vector<Outline> parts;   ///< flights and landings, four corners each
    std::vector<Riser> risers;    ///< from the foot up
    std::vector<PlanPoint> way;   ///< the walking line
    std::vector<PlanPoint> arrow; ///< the head of the arrow at its end
};

/// Straight flights along the walking line, parted by a square landing at each of its corners. The
/// risers are shared out over the flights by their length, the first at the foot and the last at
/// the head, so that a straight flight of n risers has n - 1 treads.
FlightDrawing flightOf(const Stair& stair);

/// Whether a point lies on the stair.
bool isOn(const FlightDrawing& flight, PlanPoint point);

} // namespace miterbook
