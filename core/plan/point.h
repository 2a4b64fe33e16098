// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/fields.h"
#include "basics/length.h"

#include <vector>

namespace miterbook {

/// A place on the plan of a level: x to the right, y down the sheet, from a zero that all levels of
/// the plan share.
struct PlanPoint {
    Length x;
    Length y;

    friend constexpr PlanPoint operator+(PlanPoint a, PlanPoint b) {
        return {a.x + b.x, a.y + b.y};
    }
    friend constexpr PlanPoint operator-(PlanPoint a, PlanPoint b) {
        return {a.x - b.x, a.y - b.y};
    }
    bool operator==(const PlanPoint&) const = default;
};

template <>
struct Describe<PlanPoint> {
    static constexpr std::string_view table = "";
    static constexpr std::string_view noun = "point";
    static constexpr void allFields(auto&& take) {
        take(field("x", &PlanPoint::x), field("y", &PlanPoint::y));
    }
};

/// The corners of a room in order, the room on the right hand side: clockwise as seen on the sheet.
/// Wall n runs from corner n to the next one; the last comes round to the first.
using Outline = std::vector<PlanPoint>;

} // namespace miterbook
