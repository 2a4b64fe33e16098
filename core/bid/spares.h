// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "bid/material.h"

#include <optional>

namespace miterbook {

/// Sticks bought beyond the plan, for what the saw or the yard spoils.
struct SpareSticks {
    Length length;
    int count = 0;
    Money price; ///< of one

    Money cost() const { return price * count; }
    bool operator==(const SpareSticks&) const = default;
};

/// `count` spares of the length that the plan buys most of, the longer of equals; none where it
/// buys nothing.
std::optional<SpareSticks> spareSticks(const StickPlan& plan, int count);

} // namespace miterbook
