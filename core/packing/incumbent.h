// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "packing/instance.h"
#include "packing/plan.h"

namespace miterbook::packing {

// The best plan and the best bound so far; tells the caller about each step forward.
class Incumbent {
public:
    Incumbent(const Instance& instance, const Progress& progress)
        : m_instance(instance)
        , m_progress(progress) {}

    // Takes the packing when it is better: less missing, cheaper, fewer patterns, or a longer
    // single remainder, in this order.
    bool offer(Packing packing);
    void raiseBound(std::int64_t bound);

    const Packing& packing() const { return m_packing; }
    std::int64_t bound() const { return m_bound; }
    bool complete() const { return m_any && m_packing.missingWidth == 0; }
    // What a better answer must stay below: no complete plan yet, then no limit.
    std::int64_t cutoff() const;
    bool proven() const { return complete() && m_bound >= m_packing.cost; }

private:
    void tell() const;

    const Instance& m_instance;
    const Progress& m_progress;
    Packing m_packing;
    bool m_any = false;
    std::int64_t m_bound = 0;
};

// Sorts, merges equal columns and drops repeated ones.
void tidy(Packing& packing);

} // namespace miterbook::packing
