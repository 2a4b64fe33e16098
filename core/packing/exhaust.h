// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "packing/incumbent.h"
#include "packing/master.h"
#include "packing/partial.h"

namespace miterbook::packing {

// Goes through all plans below the incumbent within given numbers of sticks. At each step one
// column p is used k times or more, or exactly k-1, k-2 ... 0 times and never again.
class Exhaust {
public:
    Exhaust(const Instance& instance, Master& master, Incumbent& incumbent, Budget& budget)
        : m_instance(instance)
        , m_master(master)
        , m_incumbent(incumbent)
        , m_budget(budget) {}

    // True when nothing below the incumbent remains within these limits. Gives up after the
    // given work.
    bool run(const StickLimits& limits, std::int64_t work);

private:
    bool visit(const Partial& partial, const std::vector<Column>& forbidden, int depth);
    bool branch(const Partial& partial, std::vector<Column> forbidden, const Column& column,
        std::int64_t times, int depth);

    const Instance& m_instance;
    Master& m_master;
    Incumbent& m_incumbent;
    Budget& m_budget;
    std::int64_t m_workEnd = 0;
};

} // namespace miterbook::packing
