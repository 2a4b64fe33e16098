// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "takeoff/casing_outline.h"
#include "takeoff/opening_trim.h"

namespace miterbook {

/// Casing sides over the length that the labour rate covers, of one opening.
struct LongSides {
    int count = 0; ///< over all faces and openings alike
    Length longest;
};

/// Counts the casing of one opening: its sides, mull casings, butted head and cap. The outline is
/// not empty and the casing profile is in the book. Remarks what the shop should know about the
/// pieces.
LongSides takeCasing(
    const OpeningTrim& trim, const std::vector<OutlineSide>& outline, Tally& tally);

/// A piece of casing, both ends square and as many as there are faces.
Piece casingPiece(const OpeningTrim& trim, Id<Profile> profile, std::string part, Length length);

/// The end of a piece at a corner of an opening (degrees): mitered to the next piece.
PieceEnd miteredEnd(double cornerDegrees);

/// The end of a piece that rests on its neighbour (a floor, a stool): square at a square corner.
PieceEnd restingEnd(double cornerDegrees);

} // namespace miterbook
