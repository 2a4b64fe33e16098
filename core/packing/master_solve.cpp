// SPDX-License-Identifier: GPL-3.0-or-later
// Column generation, and the bounds that come out of it.
#include "packing/master.h"

#include <algorithm>
#include <cmath>

namespace miterbook::packing {

namespace {

constexpr double jitter = 1e-6;

} // namespace

// Many demands of one make the program so degenerate that it stalls; a little more of each, all
// different, is asked for while columns are generated, and the true numbers at the end.
void Master::setRhs(double jitter) {
    const auto extra = [&](std::size_t row) {
        return jitter * (1 + static_cast<double>(row * 2654435761U % 1024) / 1024);
    };
    const std::size_t kinds = m_instance.kinds();
    for (std::size_t kind = 0; kind < kinds; ++kind)
        m_simplex.setRhs(
            kind, m_demand[kind] > 0 ? static_cast<double>(m_demand[kind]) + extra(kind) : 0);
    for (std::size_t bin = 0; bin < m_instance.bins().size(); ++bin) {
        m_simplex.setRhs(
            kinds + bin, static_cast<double>(m_limits.upper[bin]) + extra(kinds + bin));
        if (m_lowerRow[bin] >= 0)
            m_simplex.setRhs(static_cast<std::size_t>(m_lowerRow[bin]),
                static_cast<double>(m_limits.lower[bin]) - extra(kinds + bin));
    }
    m_simplex.refresh();
}

void Master::takeDuals() {
    const std::size_t kinds = m_instance.kinds();
    m_duals.piece.resize(kinds);
    m_duals.stick.resize(m_instance.bins().size());
    for (std::size_t kind = 0; kind < kinds; ++kind)
        m_duals.piece[kind] = std::max(0.0, m_simplex.dualValue(kind));
    for (std::size_t bin = 0; bin < m_duals.stick.size(); ++bin) {
        m_duals.stick[bin] = m_simplex.dualValue(kinds + bin);
        if (m_lowerRow[bin] >= 0)
            m_duals.stick[bin] += m_simplex.dualValue(static_cast<std::size_t>(m_lowerRow[bin]));
    }
}

Master::Outcome Master::solve(std::int64_t cutoff, Budget& budget) {
    m_bound = 0;
    setRhs(jitter);
    bool feasible = m_simplex.dual(budget);
    for (int attempt = 0; attempt < 2 && !budget.exhausted(); ++attempt) {
        if (!feasible)
            m_simplex.start(m_firstBasis); // numerical trouble: from the beginning
        priceOut();
        const Outcome outcome = solveWithPenalty(cutoff, budget);
        if (outcome != Outcome::stopped)
            return outcome;
        feasible = false;
    }
    return Outcome::stopped;
}

// Columns that may not be used but are still in the basis leave it when they cost too much.
void Master::priceOut() {
    for (std::size_t c = 0; c < m_columns.size(); ++c)
        if (m_simplex.blocked(m_ids[c]))
            m_simplex.setCost(m_ids[c], static_cast<double>(m_columns[c].cost) + m_penalty);
    m_simplex.refresh();
}

Master::Outcome Master::solveWithPenalty(std::int64_t cutoff, Budget& budget) {
    for (;;) {
        const Outcome outcome = generate(cutoff, budget);
        if (outcome != Outcome::solved || !missesPieces() || m_penalty >= m_highestPenalty)
            return outcome;
        m_penalty *= 10; // pieces were left out because that was cheap
        for (const int column : m_missing)
            m_simplex.setCost(column, m_penalty);
        m_simplex.refresh();
    }
}

Master::Outcome Master::generate(std::int64_t cutoff, Budget& budget) {
    const double step = static_cast<double>(std::max<std::int64_t>(m_instance.priceStep(), 1));
    bool jittered = true;
    for (;;) {
        if (!m_simplex.primal(budget))
            return Outcome::stopped;
        takeDuals();
        const auto found = m_pricer.columns(m_duals, m_demand, m_limits, budget);
        if (!found)
            return Outcome::stopped;
        m_bound = std::max(m_bound, m_pricer.certified());
        if (m_bound >= cutoff)
            return Outcome::tooDear;
        std::size_t added = 0;
        for (const Column& column : *found)
            added += insert(column) ? 1 : 0;
        const double high = std::ceil(m_simplex.objective() / step - 1e-6) * step;
        const bool met = static_cast<double>(m_bound) > high - 0.5;
        if (added > 0 && !met)
            continue;
        if (jittered) {
            jittered = false;
            setRhs(0);
            if (!m_simplex.dual(budget))
                return Outcome::stopped;
            continue;
        }
        if (!met && !certify(budget))
            return Outcome::stopped;
        return m_bound >= cutoff ? Outcome::tooDear : Outcome::solved;
    }
}

bool Master::certify(Budget& budget) {
    const auto bound = m_pricer.bound(m_duals, m_demand, m_limits, budget);
    if (bound)
        m_bound = std::max(m_bound, *bound);
    return bound.has_value();
}

} // namespace miterbook::packing
