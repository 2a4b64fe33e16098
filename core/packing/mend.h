// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "packing/budget.h"
#include "packing/incumbent.h"

#include <random>

namespace miterbook::packing {

// Takes a few sticks of the incumbent apart and plans their pieces anew, again and again; a plan
// that costs the same is taken too, since it may lead on to a cheaper one.
class Mend {
public:
    Mend(const Instance& instance, Incumbent& incumbent, Budget& budget)
        : m_instance(instance)
        , m_incumbent(incumbent)
        , m_budget(budget) {}

    // For about so much work.
    void run(std::int64_t work);

private:
    bool step(Packing& packing);
    std::vector<std::size_t> chosen(const Packing& packing);
    Problem withoutThem(
        Packing& packing, const std::vector<std::size_t>& lines, std::vector<int>& kinds) const;
    void addSticks(const Packing& rest, Problem& problem) const;

    const Instance& m_instance;
    Incumbent& m_incumbent;
    Budget& m_budget;
    std::mt19937 m_random; // always the same numbers
};

} // namespace miterbook::packing
