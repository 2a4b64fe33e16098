// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/fields.h"
#include "basics/id.h"
#include "plan/plan.h"

#include <string>

namespace miterbook {

/// Which row of a builder's plan a row of a house was copied from, so that what the builder revises
/// later can be shown to the house.
struct PlanTie {
    Id<PlanTie> id;
    Id<Plan> plan;           ///< a house's own
    std::string kind;        ///< of both rows, as their table is called: "opening"
    std::int64_t own = 0;    ///< id of the house's row; 0: the house does without it
    std::int64_t source = 0; ///< id of the builder's row; either may be gone
    std::int64_t stamp = 0;  ///< of the builder's row when the house last took it, or kept its own

    bool operator==(const PlanTie&) const = default;
};

template <>
struct Describe<PlanTie> {
    static constexpr std::string_view table = "plan_tie";
    static constexpr std::string_view noun = "tie to the builder's plan";
    static constexpr void allFields(auto&& take) {
        take(field("id", &PlanTie::id), field("plan", &PlanTie::plan),
            field("kind", &PlanTie::kind), field("own", &PlanTie::own),
            field("source", &PlanTie::source), field("stamp", &PlanTie::stamp));
    }
};

} // namespace miterbook
