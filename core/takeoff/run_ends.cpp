// SPDX-License-Identifier: GPL-3.0-or-later
#include "takeoff/run_ends.h"

#include "takeoff/geometry.h"

#include <cmath>
#include <numbers>

namespace miterbook {

namespace {

/// How far the profile stands off the wall: its thickness, or for sprung crown its face width times
/// the sine of the spring angle (measured from the wall).
Length standOff(const Profile& profile) {
    if (profile.springAngle <= Angle())
        return profile.thickness;
    return scaled(
        profile.width, std::sin(profile.springAngle.toDegrees() * std::numbers::pi / 180.0));
}

PieceEnd miterFor(const Profile& profile, double cornerDegrees) {
    if (profile.springAngle <= Angle())
        return {EndCut::miter, sawAngleAt(cornerDegrees), 0};
    const CompoundCut cut = crownCut(profile.springAngle.toDegrees(), cornerDegrees);
    return {EndCut::miter, cut.miter, cut.bevel};
}

RunEnd mitered(const Profile& profile, const Wall& corner) {
    const double degrees = corner.angle.toDegrees();
    RunEnd end;
    end.end = miterFor(profile, degrees);
    const Length off = scaled(standOff(profile), miterRun(degrees));
    (corner.corner == Corner::outside ? end.longer : end.shorter) = off;
    end.counted = true;
    return end;
}

RunEnd endAt(const Profile& profile, const Wall& corner, EndCut unmitered) {
    if (corner.corner == Corner::open)
        return {};
    if (corner.corner == Corner::outside || profile.joint == Joint::mitered)
        return mitered(profile, corner);
    RunEnd end;
    end.end.cut = profile.joint == Joint::coped ? unmitered : EndCut::square;
    end.counted = true;
    return end;
}

} // namespace

RunEnd farEnd(const Profile& profile, const Wall& corner) {
    return endAt(profile, corner, EndCut::square);
}

RunEnd nearEnd(const Profile& profile, const Wall& corner) {
    return endAt(profile, corner, EndCut::cope);
}

} // namespace miterbook
