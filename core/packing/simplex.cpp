// SPDX-License-Identifier: GPL-3.0-or-later
#include "packing/simplex.h"

#include <algorithm>
#include <cmath>
#include <numeric>

namespace miterbook::packing {

namespace {

constexpr double tiny = 1e-9;           // a basic value this far below zero still counts as zero
constexpr std::size_t spreadAfter = 50; // dual steps before ties are broken by force
constexpr int stallAfter = 1000;        // pivots without progress before the safe, slow rule

} // namespace

Simplex::Simplex(std::size_t rows)
    : m_rows(rows)
    , m_stride((rows + 7) / 8 * 8)
    , m_rhs(rows, 0)
    , m_first(1, 0)
    , m_inverse(m_rows * m_stride, 0)
    , m_basic(rows, 0)
    , m_dual(m_stride, 0)
    , m_direction(rows, 0) {
}

int Simplex::addColumn(std::span<const Entry> entries, double cost) {
    for (const auto& [row, value] : entries) {
        m_entryRow.push_back(row);
        m_entryValue.push_back(value);
    }
    m_first.push_back(m_entryRow.size());
    m_cost.push_back(cost);
    m_blocked.push_back(false);
    m_position.push_back(-1);
    return static_cast<int>(m_cost.size()) - 1;
}

void Simplex::keepOnly(const std::vector<char>& kept) {
    std::size_t to = 0;
    std::size_t entry = 0;
    for (std::size_t from = 0; from < columns(); ++from) {
        if (!kept[from])
            continue;
        const std::size_t end = m_first[from + 1];
        for (std::size_t e = m_first[from]; e < end; ++e, ++entry) {
            m_entryRow[entry] = m_entryRow[e];
            m_entryValue[entry] = m_entryValue[e];
        }
        m_cost[to] = m_cost[from];
        m_blocked[to] = m_blocked[from];
        m_position[to] = m_position[from];
        if (m_position[to] >= 0)
            m_basis[static_cast<std::size_t>(m_position[to])] = static_cast<int>(to);
        m_first[++to] = entry;
    }
    m_cost.resize(to);
    m_blocked.resize(to);
    m_position.resize(to);
    m_first.resize(to + 1);
    m_entryRow.resize(entry);
    m_entryValue.resize(entry);
    m_scan = 0;
}

double Simplex::dot(int column, const double* rowVector) const {
    double sum = 0;
    const std::size_t end = m_first[index(column) + 1];
    for (std::size_t e = m_first[index(column)]; e < end; ++e)
        sum += m_entryValue[e] * rowVector[m_entryRow[e]];
    return sum;
}

double Simplex::reducedCost(int column) const {
    return m_cost[index(column)] - dot(column, m_dual.data());
}

double Simplex::objective() const {
    double sum = 0;
    for (std::size_t row = 0; row < m_rows; ++row)
        sum += m_cost[index(m_basis[row])] * m_basic[row];
    return sum;
}

double Simplex::value(int column) const {
    const int row = m_position[index(column)];
    return row < 0 ? 0 : std::max(0.0, m_basic[static_cast<std::size_t>(row)]);
}

// The column with the most to gain within a part of the list; the whole list when that part has
// none. After long stalling the first column that gains at all, which cannot cycle.
int Simplex::entering(Budget& budget) {
    const std::size_t count = columns();
    const std::size_t part = m_stalled > stallAfter ? count : std::max<std::size_t>(400, count / 8);
    int best = -1;
    double gain = m_tolerance;
    if (m_stalled > stallAfter || m_scan >= count)
        m_scan = 0;
    std::size_t seen = 0;
    for (; seen < count; ++seen) {
        if (seen % part == 0 && best >= 0)
            break;
        const int column = static_cast<int>(m_scan);
        m_scan = m_scan + 1 == count ? 0 : m_scan + 1;
        if (m_position[index(column)] >= 0 || m_blocked[index(column)])
            continue;
        const double reduced = reducedCost(column);
        if (reduced >= -gain)
            continue;
        best = column;
        gain = -reduced;
        if (m_stalled > stallAfter)
            break;
    }
    budget.spend(1 + static_cast<std::int64_t>(seen) / 100);
    return best;
}

// The row that reaches zero first, the larger pivot among equals.
int Simplex::leaving() const {
    int best = -1;
    double ratio = 0;
    for (std::size_t row = 0; row < m_rows; ++row) {
        if (m_direction[row] <= smallPivot)
            continue;
        const double here = std::max(0.0, m_basic[row]) / m_direction[row];
        if (best < 0 || here < ratio - tiny
            || (here <= ratio + tiny
                && m_direction[row] > m_direction[static_cast<std::size_t>(best)])) {
            best = static_cast<int>(row);
            ratio = here;
        }
    }
    return best;
}

bool Simplex::primal(Budget& budget) {
    const auto cost = static_cast<std::int64_t>(m_rows * m_rows / 2500 + 1);
    m_stalled = 0;
    for (;;) {
        const int column = entering(budget);
        if (column < 0)
            return !budget.exhausted();
        direction(column);
        const int row = leaving();
        if (row < 0)
            return false; // cannot happen with costs of zero or more
        const double step = m_basic[static_cast<std::size_t>(row)];
        m_stalled = step > tiny ? 0 : m_stalled + 1;
        if (!pivot(static_cast<std::size_t>(row), column, reducedCost(column), budget)
            || !budget.spend(cost))
            return false;
    }
}

// The row furthest from feasible, measured along its edge: fewer steps than by value alone.
int Simplex::leavingDual() const {
    int best = -1;
    double most = 0;
    for (std::size_t row = 0; row < m_rows; ++row) {
        if (m_basic[row] >= -1e-8)
            continue;
        const double* const edge = inverse(row);
        const double norm = std::inner_product(edge, edge + m_rows, edge, 0.0);
        const double score = m_basic[row] * m_basic[row] / norm;
        if (score <= most)
            continue;
        best = static_cast<int>(row);
        most = score;
    }
    return best;
}

int Simplex::enteringDual(std::size_t row, Budget& budget) {
    const double* const pivotRow = inverse(row);
    int best = -1;
    double ratio = 0;
    double size = 0;
    for (int column = 0; column < static_cast<int>(columns()); ++column) {
        if (m_position[index(column)] >= 0 || m_blocked[index(column)])
            continue;
        const double alpha = dot(column, pivotRow);
        if (alpha >= -smallPivot)
            continue;
        const double here = std::max(0.0, reducedCost(column)) / -alpha;
        if (best < 0 || here < ratio - tiny || (here <= ratio + tiny && -alpha > size)) {
            best = column;
            ratio = here;
            size = -alpha;
        }
    }
    budget.spend(1 + static_cast<std::int64_t>(columns()) / 60);
    return best;
}

// Ties between columns can keep the dual method busy for long. Then every column outside the
// basis is made a little dearer, each by another amount; at the end the true costs return.
void Simplex::spreadCosts() {
    m_trueCost = m_cost;
    for (std::size_t column = 0; column < m_cost.size(); ++column)
        if (m_position[column] < 0)
            m_cost[column] += m_tolerance * 1e4
                * (1 + static_cast<double>(column * 2654435761U % 4096) / 1024);
}

bool Simplex::dual(Budget& budget) {
    const bool done = dualSteps(budget);
    if (!m_trueCost.empty()) {
        m_cost = std::move(m_trueCost);
        m_trueCost.clear();
        refresh();
    }
    return done;
}

bool Simplex::dualSteps(Budget& budget) {
    const auto cost = static_cast<std::int64_t>(m_rows * m_rows / 2500 + 1);
    const std::size_t most = 300 + 4 * m_rows;
    for (std::size_t steps = 0; steps < most; ++steps) {
        const int row = leavingDual();
        if (row < 0)
            return !budget.exhausted();
        if (steps == spreadAfter)
            spreadCosts();
        const int column = enteringDual(static_cast<std::size_t>(row), budget);
        if (column < 0)
            return false;
        direction(column);
        if (!pivot(static_cast<std::size_t>(row), column, reducedCost(column), budget)
            || !budget.spend(cost))
            return false;
    }
    return false;
}

} // namespace miterbook::packing
