// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "plan/opening.h"

#include <string>
#include <vector>

namespace miterbook {

/// One side of an opening, jamb inside, walked clockwise from the lower left corner with the
/// opening on the right hand.
struct OutlineSide {
    std::string name;
    Length length;
    double nearCorner = 90; ///< inside angle where the side begins, degrees
    double farCorner = 90;  ///< where it ends
    bool leg = false;       ///< runs up from the sill, stool or floor
};

/// The sides of a rectangle (left leg, head, right leg, sill) or polygon (its last side is the
/// sill). Empty when the opening has no size. An arch is a rectangle up to its spring line.
std::vector<OutlineSide> outlineOf(const Opening& opening);

/// Width at the bottom: the sill's length.
Length sillWidth(const Opening& opening);

} // namespace miterbook
