// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/length.h"

#include <vector>

namespace miterbook {

/// A place on a level, from any one corner of it.
struct Spot {
    Length x;
    Length y;

    bool operator==(const Spot&) const = default;
};

/// An opening that sets are carried to, and how many times.
struct Carry {
    Spot to;
    int trips = 1;
};

/// Straight-line distance between two places.
Length distanceBetween(Spot a, Spot b);

/// Walked with sets from `from` to every opening and back.
Length carryingDistance(Spot from, const std::vector<Carry>& carries);

/// The spot inside an open room (its corners in order round it, at least three) from which the
/// least is walked: the weighted geometric median, or the best place on the walls where that lies
/// outside. The room's middle when nothing is carried.
Spot bestSpot(const std::vector<Spot>& room, const std::vector<Carry>& carries);

} // namespace miterbook
