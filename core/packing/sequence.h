// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "packing/dense_knapsack.h"
#include "packing/greedy.h"

namespace miterbook::packing {

// Fills each stick with the pieces of the highest total worth, where long pieces are worth more
// than their width, since they get harder to place the longer one waits.
class WorthiestFirst : public Filler {
public:
    // bonus: how much more per width the longest stick's worth of one piece counts, 0.1 = 10 %.
    WorthiestFirst(const Instance& instance, double bonus, Budget& budget);
    bool prepare(const Remaining& remaining) override;
    Column fill(std::size_t bin) override;

private:
    const Instance& m_instance;
    Budget& m_budget;
    DenseKnapsack<std::int32_t> m_knapsack;
    std::vector<std::int32_t> m_worth;
};

} // namespace miterbook::packing
