// SPDX-License-Identifier: GPL-3.0-or-later
#include "packing/exhaust.h"

#include <algorithm>
#include <cmath>

namespace miterbook::packing {

namespace {

constexpr int deepest = 1500; // steps down before giving up on a path

} // namespace

bool Exhaust::run(const StickLimits& limits, std::int64_t work) {
    m_workEnd = m_budget.spent() + work;
    return visit({m_instance.demand(), limits, {}}, {}, 0);
}

bool Exhaust::visit(const Partial& partial, const std::vector<Column>& forbidden, int depth) {
    if (partial.done()) {
        Packing packing = partial.fixed;
        m_incumbent.offer(std::move(packing));
        return true;
    }
    if (depth > deepest || m_budget.spent() > m_workEnd)
        return false;
    m_master.ask(partial.demand, partial.limits, forbidden);
    const auto outcome = m_master.solve(m_incumbent.cutoff() - partial.fixed.cost, m_budget);
    if (outcome != Master::Outcome::solved)
        return outcome == Master::Outcome::tooDear;
    for (const auto& [index, value] : m_master.solution()) {
        const Column column = m_master.column(index);
        const std::int64_t most = partial.repeats(column);
        if (most <= 0 || std::find(forbidden.begin(), forbidden.end(), column) != forbidden.end())
            continue;
        const auto whole = static_cast<std::int64_t>(std::floor(value + 1e-6));
        return branch(partial, forbidden, column, std::clamp<std::int64_t>(whole, 1, most), depth);
    }
    return false;
}

bool Exhaust::branch(const Partial& partial, std::vector<Column> forbidden, const Column& column,
    std::int64_t times, int depth) {
    Partial child = partial;
    child.take(column, times);
    bool closed = visit(child, forbidden, depth + 1);
    forbidden.push_back(column);
    while (--times >= 0 && !m_budget.exhausted() && m_budget.spent() <= m_workEnd) {
        child = partial;
        if (times > 0)
            child.take(column, times);
        closed = visit(child, forbidden, depth + 1) && closed;
    }
    return closed && times < 0;
}

} // namespace miterbook::packing
