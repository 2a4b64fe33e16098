// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/house.h"
#include "plan/whole_plan.h"

namespace miterbook {

/// What the screen is about: a builder's plan with a selection, or a house (then `plan` is the
/// house's own copy and the selection is empty).
struct JobRef {
    Id<Plan> plan;
    Id<House> house;
    Selection selection;

    explicit operator bool() const { return static_cast<bool>(plan); }
    bool operator==(const JobRef&) const = default;
};

} // namespace miterbook
