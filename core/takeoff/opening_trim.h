// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "takeoff/tally.h"

namespace miterbook {

/// How one opening is really trimmed: its own choices, else the plan's, else the shop's.
struct OpeningTrim {
    const Opening& opening;
    Source source = {};
    PieceOfWork work = PieceOfWork::doors;
    TrimStyle style = TrimStyle::threeSided;
    int faces = 0; ///< cased faces of the wall, over all openings alike
    Id<Profile> casing = {};
    const Profile* profile = nullptr; ///< of the casing; none: not named or not in the book
    Length face = {};                 ///< casing width; 0 without casing
    Length reveal = {};
    Id<Profile> stool = {}; ///< none: no stool
    Conditions conditions = {};

    /// Whether casing is nailed round it at all.
    bool cased() const { return faces > 0 && style != TrimStyle::drywallReturn; }
    /// Outside of casing to outside, across the opening.
    Length outside(Length width) const { return width + 2 * reveal + 2 * face; }
};

/// A door or cased opening is three-sided unless it has a butted head or drywall return; a window
/// as it says. Makes no remarks.
OpeningTrim openingTrim(const Opening& opening, Tally& tally);

} // namespace miterbook
