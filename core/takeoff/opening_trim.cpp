// SPDX-License-Identifier: GPL-3.0-or-later
#include "takeoff/opening_trim.h"

#include "takeoff/conditions.h"

#include <algorithm>

namespace miterbook {

namespace {

TrimStyle styleOf(const Opening& opening) {
    const bool floor = !opening.isWindow();
    if (floor && opening.style != TrimStyle::buttedHead
        && opening.style != TrimStyle::drywallReturn)
        return TrimStyle::threeSided;
    return opening.style;
}

/// A butted head stands on a stool only where the opening names one; without casing or apron a
/// drywall return takes the plan's.
Id<Profile> stoolOf(const Opening& opening, TrimStyle style, const Plan& plan) {
    if (!opening.isWindow() || style == TrimStyle::pictureFrame || style == TrimStyle::threeSided)
        return {};
    if (opening.stool || style == TrimStyle::buttedHead)
        return opening.stool;
    return plan.stool;
}

} // namespace

OpeningTrim openingTrim(const Opening& opening, Tally& tally) {
    const Plan& plan = tally.plan().plan;
    OpeningTrim trim{opening, tally.sourceOf(opening)};
    trim.work = opening.isWindow() ? PieceOfWork::windows : PieceOfWork::doors;
    trim.style = styleOf(opening);
    trim.faces = std::clamp(opening.sidesCased, 0, 2) * std::max(opening.count, 0);
    trim.casing = opening.casing ? opening.casing
        : opening.isWindow()     ? plan.windowCasing
                                 : plan.doorCasing;
    trim.profile = trim.casing ? tally.stock(trim.casing).profile : nullptr;
    if (trim.cased()) {
        trim.face = trim.profile ? trim.profile->width : Length();
        trim.reveal = opening.reveal > Length() ? opening.reveal : tally.practice().reveal;
    }
    trim.stool = trim.faces > 0 ? stoolOf(opening, trim.style, plan) : Id<Profile>();
    const Profile* seen = trim.cased() || !trim.stool ? trim.profile
                                                      : tally.stock(trim.stool).profile;
    trim.conditions = conditionsFor(tally, trim.source, seen);
    if (opening.shape == Shape::arch)
        trim.conditions.add(Condition::radius);
    return trim;
}

} // namespace miterbook
