// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "packing/incumbent.h"
#include "packing/master.h"

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
    // Only plans below cutoff are sought. True when one was found.
    bool run(const StickLimits& limits, std::int64_t cutoff, int discrepancies);

private:
    struct Node {
        Counts demand;
        StickLimits limits;
        Packing fixed;
        std::vector<Column> tabu; // tried before on this path, not to be chosen again
    };

    void visit(Node node, int discrepancies);
    void take(Node& node, const Column& column, std::int64_t times) const;
    void takeWhole(Node& node, std::vector<std::pair<Column, double>>& uses) const;
    bool finish(Node& node);
    void complete(const Node& node);

    const Instance& m_instance;
    Master& m_master;
    Incumbent& m_incumbent;
    Budget& m_budget;
    std::int64_t m_cutoff = 0;
    bool m_found = false;
};

} // namespace miterbook::packing
