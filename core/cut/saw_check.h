// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/length.h"

#include <vector>

namespace miterbook {

/// One test cut: what the stop was set to and what the piece measured.
struct TestCut {
    Length set;
    Length measured;
};

/// What is added to every setting so that pieces come out right: the mean of set less measured, and
/// how far the cuts are from agreeing (the greatest correction less the least). Zero without cuts.
struct SawCorrection {
    Length add;
    Length spread;
    int cuts = 0;
};
SawCorrection sawCorrection(const std::vector<TestCut>& cuts);

/// Which end of a miter an angle error opens: under the true angle the toe (outside), over it the
/// heel (inside).
struct AngleError {
    double perCut = 0;    ///< degrees over (negative: under) the saw angle wanted
    Length cornerGap;     ///< of one corner of two such cuts
    Length lastCornerGap; ///< of a frame's last corner when the others are held tight
};

/// From a measured corner of two cuts: each is off by half of what the corner misses, and the
/// `corners` of a frame add up in the last one [calc]. A corner of two cuts too steep is closed
/// too far, so it measures under the one wanted.
AngleError angleError(double wantedCorner, double measuredCorner, Length faceWidth, int corners);

/// How far the angle cut on a bowed stick is off, degrees, where only `fence` of its length beside
/// the cut lies against the fence and the stick is later nailed straight. The bow is taken as a
/// parabola of height `bow` over `stick`: 4 bow / stick x (1 - fence / stick) [calc].
double bowedStickError(Length bow, Length stick, Length fence);

} // namespace miterbook
