// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "packing/budget.h"
#include "packing/instance.h"

namespace miterbook::packing {

// Less missing first, then less cost.
bool better(const Packing& a, const Packing& b);

// The best of a few greedy plans. Always complete unless sticks run out; when the budget ends
// early, the plan by falling length remains.
Packing quickPacking(const Instance& instance, Budget& budget);

// A bound that needs no search: total width at the lowest price per width. In cents.
std::int64_t simpleBound(const Instance& instance);

} // namespace miterbook::packing
