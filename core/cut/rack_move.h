// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/fields.h"
#include "basics/id.h"
#include "basics/length.h"
#include "book/profile.h"
#include "plan/plan.h"

namespace miterbook {

/// What a house took out of the shop's rack, or put there: an offcut that it began to cut, or what
/// a stick of its sheet had left.
struct RackMove {
    Id<RackMove> id;
    Id<Plan> plan;
    int stick = 0; ///< number on the saw sheet
    Id<Profile> profile;
    Length length;
    bool put = false;        ///< else taken
    std::int64_t offcut = 0; ///< id of its row in the rack; that row may be gone

    bool operator==(const RackMove&) const = default;
};

template <>
struct Describe<RackMove> {
    static constexpr std::string_view table = "rack_move";
    static constexpr std::string_view noun = "offcut taken or put away";
    static constexpr void allFields(auto&& take) {
        take(field("id", &RackMove::id), field("plan", &RackMove::plan),
            field("stick", &RackMove::stick), field("profile", &RackMove::profile),
            field("length", &RackMove::length), field("put", &RackMove::put),
            field("offcut", &RackMove::offcut));
    }
};

} // namespace miterbook
