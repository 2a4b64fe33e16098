// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "takeoff/tally.h"

namespace miterbook {

/// One piece of a divided run.
struct RunPart {
    Length length;        ///< with its share of the scarfs
    bool spliced = false; ///< joined to the part before; else that one ends at an opening

    bool operator==(const RunPart&) const = default;
};

/// A run divided into what comes out of sticks, in order along the run.
struct SplicedRun {
    std::vector<RunPart> parts;
    int splices = 0;
    Length longest; ///< the longest stretch without an opening in it, before it was spliced
};

/// Divides a run at the openings in its wall and so that no piece is longer than `longest` (0:
/// unknown, nothing is spliced). `openings` part the run evenly: where they stand is not known.
/// Each splice adds `scarf`; one splice per extra stick.
SplicedRun spliceRun(Length run, Length longest, Length scarf, int openings);

/// ` of 192 9/16" is longer than the longest stick stocked (16 ft); spliced.` with the end trim
/// where there is one.
std::string splicedText(Length run, Length stick, const Tally& tally);

/// Adds a plain square-ended run of `piece`'s profile, spliced with a warning where no stick is
/// long enough. The piece's lengths and ends are set here.
void addRun(Piece piece, Length run, Tally& tally);

} // namespace miterbook
