// SPDX-License-Identifier: GPL-3.0-or-later
#include "packing/search.h"

#include <algorithm>

namespace miterbook::packing {

Search::Search(const Instance& instance, Incumbent& incumbent, Budget& budget)
    : m_instance(instance)
    , m_incumbent(incumbent)
    , m_budget(budget)
    , m_master(instance) {
    for (const auto& [column, times] : incumbent.packing().columns)
        m_master.add(column);
}

// No better plan spends more than the cutoff on one kind of stick.
StickLimits Search::rootLimits() const {
    StickLimits limits;
    for (const Bin& bin : m_instance.bins()) {
        std::int64_t upper = bin.available;
        if (bin.price > 0 && !m_instance.salvages())
            upper = std::min(upper, m_incumbent.cutoff() / bin.price);
        limits.lower.push_back(0);
        limits.upper.push_back(upper);
    }
    return limits;
}

void Search::run() {
    const StickLimits limits = rootLimits();
    m_master.ask(m_instance.demand(), limits);
    const auto outcome = m_master.solve(m_incumbent.cutoff(), m_budget);
    m_incumbent.raiseBound(m_master.bound());
    if (outcome != Master::Outcome::solved || !m_incumbent.complete())
        return;
    Dive dive(m_instance, m_master, m_incumbent, m_budget);
    for (int d = 0; d < 6 && !m_incumbent.proven() && !m_budget.exhausted(); ++d)
        dive.run(limits, m_incumbent.cutoff(), d);
}

} // namespace miterbook::packing
