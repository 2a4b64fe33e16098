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

/// How far a mitered end runs past its side, for each unit of offset from the jamb: cot(corner /
/// 2).
double miterRun(double cornerDegrees);

/// The same for an end that rests on the side's neighbour (a leg on a stool or floor) instead of
/// being mitered to it: cot(corner); 0 where it stands square.
double restRun(double cornerDegrees);

/// Points of a side whose ends run past it by runA and runB (of either kind above; negative where
/// the end slants inward). For mitered ends the same as sidePoints.
SidePoints sideBetween(Length side, double runA, double runB, Length reveal, Length faceWidth);

/// A length times a plain number, to the nearest nanometre.
Length scaled(Length length, double factor);

/// A segmental arch over a chord: radius (chord^2 / 4 + rise^2) / (2 rise), arc 2 R asin(chord /
/// 2R). Both must be positive.
struct Arch {
    Length radius;
    Length arc;
};
Arch segmentalArch(Length chord, Length rise);

/// A leg below a segmental arch, from the level that `height` is measured from up to the joint with
/// the arched head: short point where the inner edges meet (radius R + reveal), long point where
/// the outer edges do (R + reveal + face width), both about the arch's own centre. `height` is to
/// the spring line; `sawAngle` in degrees from square.
struct ArchLeg {
    SidePoints points;
    double sawAngle = 0;
};
ArchLeg archLeg(Length height, Length chord, Length rise, Length reveal, Length faceWidth);

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

/// What one cut takes out of a stick: the kerf, at 45 degrees kerf x sqrt 2, rounded up to 1/64 in.
Length kerfTaken(Length kerf, bool mitered);

} // namespace miterbook
