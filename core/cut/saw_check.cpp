// SPDX-License-Identifier: GPL-3.0-or-later
#include "cut/saw_check.h"

#include "cut/squareness.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace miterbook {

SawCorrection sawCorrection(const std::vector<TestCut>& cuts) {
    SawCorrection correction;
    if (cuts.empty())
        return correction;
    Length sum;
    Length least = cuts.front().set - cuts.front().measured;
    Length most = least;
    for (const TestCut& cut : cuts) {
        const Length off = cut.set - cut.measured;
        sum += off;
        least = std::min(least, off);
        most = std::max(most, off);
    }
    correction.cuts = static_cast<int>(cuts.size());
    correction.add = sum / correction.cuts;
    correction.spread = most - least;
    return correction;
}

AngleError angleError(double wantedCorner, double measuredCorner, Length faceWidth, int corners) {
    AngleError error;
    const double cornerOff = wantedCorner - measuredCorner;
    error.perCut = cornerOff / 2;
    error.cornerGap = miterGapFor(faceWidth, cornerOff);
    error.lastCornerGap = miterGapFor(faceWidth, cornerOff * std::max(corners, 1));
    return error;
}

double bowedStickError(Length bow, Length stick, Length fence) {
    if (stick <= Length())
        return 0;
    const double share = std::clamp(fence.toInches() / stick.toInches(), 0.0, 1.0);
    const double slope = 4 * std::abs(bow.toInches()) / stick.toInches() * (1 - share);
    return std::atan(slope) * 180.0 / std::numbers::pi;
}

} // namespace miterbook
