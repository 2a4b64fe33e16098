// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/length.h"

#include <vector>

namespace miterbook {

/// How corners are made up at the bench: minutes to make one up, minutes its clamp must stay, and
/// how many clamps there are (at least one).
struct CornerWork {
    double makeUp = 2;
    double dwell = 30;
    int clamps = 4;
};

/// When one set of an assembly run is begun, made up, and off the bench, in minutes from the start.
struct SetTimes {
    double begun = 0;
    double made = 0;
    double off = 0; ///< its last clamp is free

    bool operator==(const SetTimes&) const = default;
};

/// Goes through sets of so many corners each with one pair of hands. Corner k starts when corner
/// k-1 is finished and clamp k-N is free: start(k) = max(finish(k-1), start(k-N) + a + d),
/// finish(k) = start(k) + a [calc]. A set without corners takes no time.
std::vector<SetTimes> runAssembly(const std::vector<int>& corners, const CornerWork& work);

/// Minutes per corner in the long run: max(a, (a + d) / N) [calc].
double minutesPerCorner(const CornerWork& work);
/// Clamps that never keep the bench waiting: ceil(1 + d / a) [calc]; 1 where a is not positive.
int clampsThatNeverWait(const CornerWork& work);
/// Sets of so many corners made up in an hour in the long run; 0 for none.
double setsPerHour(const CornerWork& work, int corners);

/// One way of joining corners, as the shop reckons it.
struct WayOfJoining {
    CornerWork corner;
    double fastenerMinutes = 0; ///< more for a corner with a spline, biscuit or tenon
    double centsPerCorner = 0;  ///< adhesive and what goes with it
    double fastenerCents = 0;
    Length fastenerOver; ///< wider casing gets one; zero: every width does
};

/// What one set costs by a way of joining.
struct SetCost {
    bool fastened = false;  ///< its corners get a mechanical joint
    double minutes = 0;     ///< hands at the bench
    double cents = 0;       ///< goods, and the minutes at the crew's rate
    int clamps = 0;         ///< that keep the bench busy
    double setsPerHour = 0; ///< with the clamps there are
};

/// One set of so many corners in casing of a width, at a crew rate in cents an hour.
SetCost setCost(const WayOfJoining& way, int corners, Length width, double centsPerHour);

/// Mechanical joints for each corner of a casing: none up to `over`; above it one to 4 1/2 in
/// wide, two from 5 in, and one between [common practice].
int fastenersPerCorner(Length width, Length over);

} // namespace miterbook
