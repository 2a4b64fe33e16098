// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "packing/problem.h"

#include <cstdint>
#include <optional>
#include <random>

namespace miterbook::packing {

// The lowest cost of cutting everything, by trying every way; nothing when sticks run out.
// For a handful of pieces only.
std::optional<std::int64_t> bruteForce(const Problem& problem);

// A random problem of at most seven pieces from one to three kinds of sticks.
Problem smallProblem(std::mt19937& random, bool limited, bool credited);

} // namespace miterbook::packing
