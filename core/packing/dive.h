// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "packing/incumbent.h"
#include "packing/master.h"
#include "packing/partial.h"

namespace miterbook::packing {

// Looks for a plan by rounding the linear program one column at a time and solving it again for
// the rest; goes back to try the next best column a limited number of times.
class Dive {
public:
    Dive(const Instance& instance, Master& master, Incumbent& incumbent, Budget& budget)
        : m_instance(instance)
        , m_master(master)
        , m_incumbent(incumbent)
        , m_budget(budget) {}

    // discrepancies: how many times on one path the second choice and so on may be taken.
    // Only plans below the incumbent are sought.
    void run(const StickLimits& limits, int discrepancies);

    // Only rounds down what the master found last and ends greedily; needs no budget.
    void round(const StickLimits& limits);

private:
    using Uses = std::vector<std::pair<Column, double>>;

    void visit(Partial partial, std::vector<Column> tabu, int discrepancies);
    bool takeWhole(Partial& partial, Uses& uses) const;
    Uses solution() const;
    bool finish(Partial& partial);
    void completeGreedily(const Partial& partial);
    void offer(Packing packing, const Partial& before);

    const Instance& m_instance;
    Master& m_master;
    Incumbent& m_incumbent;
    Budget& m_budget;
};

} // namespace miterbook::packing
