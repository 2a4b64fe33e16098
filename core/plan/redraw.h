// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "plan/place.h"

namespace miterbook {

/// An outline moved as a whole.
Outline moved(Outline outline, PlanPoint by);

/// One wall moved along its own square, its neighbours made longer or shorter: how a room is made
/// larger by its wall. `by` is taken square to the wall.
Outline wallMoved(Outline outline, std::size_t wall, PlanPoint by);

/// A room mirrored left for right about the line x = `axis`: walls, what is said of them, and what
/// stands against them are taken along.
Room mirrored(Room room, Length axis);

/// The number (from 1) that wall `wall` (from 1) of a room with `count` walls has after it is
/// mirrored.
int mirroredWall(int wall, std::size_t count);

/// An opening of a room that is mirrored: the same place in the mirrored wall, hung on the other
/// hand.
Opening mirrored(Opening opening, const Room& before);

/// An opening whose room was drawn anew: it stands where it stood, or as near as its wall lets it.
/// `before` and `after` are the room; an opening without a place stays without.
Opening rehung(Opening opening, const Room& before, const Room& after);

/// A place kept far enough from the wall's ends that a width fits; the middle where it does not
/// fit.
Length keptWithin(Length along, Length width, Length wall);

} // namespace miterbook
