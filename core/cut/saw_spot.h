// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/fields.h"
#include "basics/id.h"
#include "basics/length.h"
#include "plan/plan.h"

namespace miterbook {

/// Where the crew has put saw and bench on a level of a house, in the places of its drawing.
struct SawSpot {
    Id<SawSpot> id;
    Id<Plan> plan;
    std::int64_t level = 0; ///< id of its level; that row may be gone
    Length x;
    Length y;

    bool operator==(const SawSpot&) const = default;
};

template <>
struct Describe<SawSpot> {
    static constexpr std::string_view table = "saw_spot";
    static constexpr std::string_view noun = "place of the saw";
    static constexpr void allFields(auto&& take) {
        take(field("id", &SawSpot::id), field("plan", &SawSpot::plan),
            field("level", &SawSpot::level), field("x", &SawSpot::x), field("y", &SawSpot::y));
    }
};

} // namespace miterbook
