// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/number.h"
#include "plan/point.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace miterbook {

/// Exact: 1 when c lies to the right of the way from a to b as seen on the sheet, -1 to the left, 0
/// on its line.
inline int sideOf(PlanPoint a, PlanPoint b, PlanPoint c) {
    const Wide cross = Wide((b.x - a.x).nm()) * (c.y - a.y).nm()
        - Wide((b.y - a.y).nm()) * (c.x - a.x).nm();
    return cross > 0 ? 1 : cross < 0 ? -1 : 0;
}

/// The sign of how far the way from b to c goes on in the direction from a to b.
inline int dot(PlanPoint a, PlanPoint b, PlanPoint c) {
    const Wide sum = Wide((b.x - a.x).nm()) * (c.x - b.x).nm()
        + Wide((b.y - a.y).nm()) * (c.y - b.y).nm();
    return sum > 0 ? 1 : sum < 0 ? -1 : 0;
}

/// Whether a point on the line through a and b is within the two.
inline bool between(PlanPoint a, PlanPoint b, PlanPoint p) {
    return std::min(a.x, b.x) <= p.x && p.x <= std::max(a.x, b.x) && std::min(a.y, b.y) <= p.y
        && p.y <= std::max(a.y, b.y);
}

/// Whether two walls cross or touch.
inline bool meet(PlanPoint a, PlanPoint b, PlanPoint c, PlanPoint d) {
    const int abc = sideOf(a, b, c);
    const int abd = sideOf(a, b, d);
    const int cda = sideOf(c, d, a);
    const int cdb = sideOf(c, d, b);
    if (abc * abd < 0 && cda * cdb < 0)
        return true;
    return (abc == 0 && between(a, b, c)) || (abd == 0 && between(a, b, d))
        || (cda == 0 && between(c, d, a)) || (cdb == 0 && between(c, d, b));
}

/// The way of a length in a direction, degrees clockwise on the sheet from the x axis; exact along
/// the axes.
inline PlanPoint wayAlong(double degrees, Length length) {
    const double quarter = std::remainder(degrees, 360.0) / 90.0;
    if (quarter == std::round(quarter)) {
        const int turns = (static_cast<int>(quarter) + 4) % 4;
        return turns == 0 ? PlanPoint{length, {}}
            : turns == 1  ? PlanPoint{{}, length}
            : turns == 2  ? PlanPoint{-length, {}}
                          : PlanPoint{{}, -length};
    }
    const double radians = degrees * std::numbers::pi / 180.0;
    const auto nm = static_cast<double>(length.nm());
    return {Length::nanometres(std::llround(nm * std::cos(radians))),
        Length::nanometres(std::llround(nm * std::sin(radians)))};
}

} // namespace miterbook
