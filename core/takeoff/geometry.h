// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/length.h"

#include <vector>

namespace miterbook {

/// Saw angle, degrees from square, at a corner of interior angle `cornerDegrees`: 90 - corner / 2.
double sawAngleAt(double cornerDegrees);

/// Long point minus short point at one mitered end of a casing of face width c at a corner:
/// c x cot(corner / 2). c at 90 degrees.
Length longMinusShort(Length faceWidth, double cornerDegrees);

/// Short and long point of a side between corners a and b (degrees), `side` measured jamb inside:
/// SP = side + r k, LP = SP + c k with k = cot(a/2) + cot(b/2).
struct SidePoints {
    Length shortPoint;
    Length longPoint;
};
SidePoints sidePoints(Length side, double a, double b, Length reveal, Length faceWidth);

/// A segmental arch over a chord: radius (chord^2 / 4 + rise^2) / (2 rise), arc 2 R asin(chord / 2R).
/// Both must be positive.
struct Arch {
    Length radius;
    Length arc;
};
Arch segmentalArch(Length chord, Length rise);

/// Miter and bevel, degrees, of crown cut flat on the saw: spring angle measured from the wall, and
/// the wall corner. miter = atan(sin S tan(90 - corner/2)), bevel = asin(cos S sin(90 - corner/2)).
struct CompoundCut {
    double miter = 0;
    double bevel = 0;
};
CompoundCut crownCut(double springDegrees, double cornerDegrees);

/// Balusters in a clear run so that no gap reaches `largestGap`: n = ceil((L - G) / (b + G)),
/// gap = (L - n b) / (n + 1). Run, width and gap must be positive.
struct BalusterSpacing {
    int count = 0;
    Length gap;
};
BalusterSpacing balusters(Length clearRun, Length width, Length largestGap);

/// Jamb extension depth: wall thickness - frame depth; zero when either is not said or it is none.
Length extensionDepth(Length wallThickness, Length frameDepth);

} // namespace miterbook
