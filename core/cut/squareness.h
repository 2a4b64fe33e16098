// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/length.h"

namespace miterbook {

/// What an opening that is out of square does to its casing.
struct OutOfSquare {
    double skewDegrees = 0; ///< how far its corners are from square
    Length runOut;          ///< how far a square frame's reveal runs out along the longer side
    Length miterGap;        ///< at each corner when the casing is forced to follow the opening

    bool operator==(const OutOfSquare&) const = default;
};

/// From the two diagonals of an opening w x h cased with a face of c. By the law of cosines the
/// corners are off by asin(|d1^2 - d2^2| / (4 w h)); the reveal runs out by the longer side x
/// tan(skew), the miter by c sqrt 2 x skew [calc]. All zero where a size is missing.
OutOfSquare outOfSquare(Length width, Length height, Length d1, Length d2, Length faceWidth);

/// How far the middle of a side stands off the line between its ends, from the opening's size at
/// both ends and in the middle; positive where it bows outward (the middle is wider). Zero where a
/// reading is missing.
Length bowOf(Length oneEnd, Length middle, Length otherEnd);

/// The gap of a miter of face c when its two saw angles together miss the corner by so many
/// degrees: c sqrt 2 x angle [calc, small angles].
Length miterGapFor(Length faceWidth, double degreesOff);

} // namespace miterbook
