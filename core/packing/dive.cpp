// SPDX-License-Identifier: GPL-3.0-or-later
#include "packing/dive.h"

#include "packing/greedy.h"

#include <algorithm>
#include <cmath>

namespace miterbook::packing {

void Dive::run(const StickLimits& limits, int discrepancies) {
    visit({m_instance.demand(), limits, {}}, {}, discrepancies);
}

// Settles the whole part of each use; false when there was none.
bool Dive::takeWhole(Partial& partial, Uses& uses) const {
    bool any = false;
    for (auto& [column, value] : uses) {
        auto times = static_cast<std::int64_t>(std::floor(value + 1e-6));
        value -= static_cast<double>(times);
        while (times > 0) {
            const Column part = partial.trimmed(m_instance, column);
            const std::int64_t repeats = std::min(times, partial.repeats(part));
            if (repeats <= 0)
                break;
            partial.take(part, repeats);
            times -= repeats;
            any = true;
        }
    }
    return any;
}

bool Dive::finish(Partial& partial) {
    if (!partial.done())
        return false;
    m_incumbent.offer(partial.fixed);
    return true;
}

// A greedy end for what is left; costs next to nothing.
void Dive::completeGreedily(const Partial& partial) {
    Remaining remaining(m_instance);
    remaining.demand = partial.demand;
    remaining.available = partial.limits.upper;
    LargestFirst filler(m_instance);
    Packing rest = fillGreedily(m_instance, remaining, filler);
    if (rest.missingWidth > m_incumbent.packing().missingWidth
        || rest.cost + partial.fixed.cost >= m_incumbent.cutoff())
        return;
    offer(std::move(rest), partial);
}

void Dive::offer(Packing packing, const Partial& before) {
    packing.cost += before.fixed.cost;
    packing.columns.insert(
        packing.columns.end(), before.fixed.columns.begin(), before.fixed.columns.end());
    m_incumbent.offer(std::move(packing));
}

void Dive::round(const StickLimits& limits) {
    Partial partial{m_instance.demand(), limits, {}};
    Uses uses = solution();
    takeWhole(partial, uses);
    completeGreedily(partial);
}

// Largest uses first.
Dive::Uses Dive::solution() const {
    Uses uses;
    for (const auto& [index, value] : m_master.solution())
        uses.emplace_back(m_master.column(index), value);
    return uses;
}

void Dive::visit(Partial partial, std::vector<Column> tabu, int discrepancies) {
    m_master.ask(partial.demand, partial.limits, {});
    if (m_master.solve(m_incumbent.cutoff() - partial.fixed.cost, m_budget)
        != Master::Outcome::solved)
        return;
    Uses uses = solution();
    takeWhole(partial, uses);
    if (finish(partial))
        return;
    completeGreedily(partial);
    std::erase_if(uses, [](const auto& use) { return use.second < 1e-6; });
    std::stable_sort(
        uses.begin(), uses.end(), [](const auto& a, const auto& b) { return a.second > b.second; });
    for (const auto& use : uses) {
        if (std::find(tabu.begin(), tabu.end(), use.first) != tabu.end())
            continue;
        if (discrepancies < 0 || m_budget.exhausted() || partial.fixed.cost >= m_incumbent.cutoff())
            break;
        Partial child = partial;
        Uses one{{use.first, 1.0}};
        if (!takeWhole(child, one))
            continue;
        if (!finish(child))
            visit(std::move(child), tabu, discrepancies);
        tabu.push_back(use.first);
        --discrepancies;
    }
}

} // namespace miterbook::packing
