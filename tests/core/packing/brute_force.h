// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "packing/plan.h"
#include "packing/problem.h"

#include <cstdint>
#include <optional>
#include <random>

namespace miterbook::packing {

// The lowest cost of cutting everything, by trying every way; nothing when sticks run out.
// For a handful of pieces only.
std::optional<std::int64_t> bruteForce(const Problem& problem);

// What the plan has that is best among those of the lowest cost: fewest different patterns, then
// the longest single remainder (less one kerf, below zero when every stick ends flush).
struct Tidy {
    std::size_t patterns = 0;
    std::int64_t longest = 0;
    bool operator==(const Tidy&) const = default;
};

// By trying every way again; the problem must be soluble, for this cost and no less.
Tidy tidiest(const Problem& problem, std::int64_t cost);
// The same of a plan.
Tidy tidiness(const Problem& problem, const Plan& plan);

// A random problem of at most seven pieces from one to three kinds of sticks.
Problem smallProblem(std::mt19937& random, bool limited, bool credited);

} // namespace miterbook::packing
