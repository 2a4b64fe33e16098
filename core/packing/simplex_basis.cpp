// SPDX-License-Identifier: GPL-3.0-or-later
// The inverse of the basis: how it starts, changes and is made anew.
#include "packing/simplex.h"

#include "packing/vector_loops.h"

#include <algorithm>
#include <cmath>
#include <numeric>

namespace miterbook::packing {

namespace {

constexpr int checkEvery = 100; // pivots between looks at the numerical error
constexpr double mostError = 1e-7;

} // namespace

void Simplex::start(const std::vector<int>& basis) {
    m_basis = basis;
    std::fill(m_position.begin(), m_position.end(), -1);
    std::fill(m_inverse.begin(), m_inverse.end(), 0);
    for (std::size_t row = 0; row < m_rows; ++row) {
        const std::size_t column = index(m_basis[row]);
        m_position[column] = static_cast<int>(row);
        inverse(row)[row] = 1 / m_entryValue[m_first[column]];
    }
    refresh();
}

void Simplex::refresh() {
    for (std::size_t row = 0; row < m_rows; ++row)
        m_basic[row] = std::inner_product(m_rhs.begin(), m_rhs.end(), inverse(row), 0.0);
    std::fill(m_dual.begin(), m_dual.end(), 0);
    for (std::size_t row = 0; row < m_rows; ++row)
        if (const double cost = m_cost[index(m_basis[row])]; cost != 0)
            addScaled(m_dual.data(), inverse(row), m_rows, cost);
}

void Simplex::direction(int column) {
    for (std::size_t row = 0; row < m_rows; ++row)
        m_direction[row] = dot(column, inverse(row));
}

bool Simplex::pivot(std::size_t row, int column, double reduced, Budget& budget) {
    const double by = m_direction[row];
    if (std::abs(by) < smallPivot)
        return false;
    double* const pivotRow = inverse(row);
    const double step = m_basic[row] / by;
    addScaled(m_dual.data(), pivotRow, m_rows, reduced / by);
    for (std::size_t i = 0; i < m_stride; ++i)
        pivotRow[i] /= by;
    for (std::size_t r = 0; r < m_rows; ++r) {
        if (r == row || std::abs(m_direction[r]) < 1e-13)
            continue;
        addScaled(inverse(r), pivotRow, m_stride, -m_direction[r]);
        m_basic[r] -= m_direction[r] * step;
    }
    m_basic[row] = step;
    m_position[index(m_basis[row])] = -1;
    m_position[index(column)] = static_cast<int>(row);
    m_basis[row] = column;
    if (++m_sinceInverted < checkEvery)
        return true;
    return settle(budget);
}

// Looks at the error now and then and inverts anew when it has grown.
bool Simplex::settle(Budget& budget) {
    m_sinceInverted = 0;
    refresh();
    if (residual() <= mostError)
        return true;
    return invert(budget);
}

double Simplex::residual() const {
    std::vector<double> left = m_rhs;
    double worst = 0;
    for (std::size_t row = 0; row < m_rows; ++row) {
        const int column = m_basis[row];
        const std::size_t end = m_first[index(column) + 1];
        for (std::size_t e = m_first[index(column)]; e < end; ++e)
            left[static_cast<std::size_t>(m_entryRow[e])] -= m_entryValue[e] * m_basic[row];
        worst = std::max(worst, std::abs(reducedCost(column)) * 1e-3);
    }
    for (const double rest : left)
        worst = std::max(worst, std::abs(rest));
    return worst;
}

// Gauss-Jordan with row pivoting on [B | I].
bool Simplex::invert(Budget& budget) {
    const std::size_t n = m_rows;
    std::vector<double> matrix(n * m_stride, 0);
    for (std::size_t position = 0; position < n; ++position) {
        const std::size_t column = index(m_basis[position]);
        for (std::size_t e = m_first[column]; e < m_first[column + 1]; ++e)
            matrix[static_cast<std::size_t>(m_entryRow[e]) * m_stride + position] = m_entryValue[e];
    }
    std::fill(m_inverse.begin(), m_inverse.end(), 0);
    for (std::size_t row = 0; row < n; ++row)
        inverse(row)[row] = 1;
    for (std::size_t k = 0; k < n; ++k) {
        std::size_t best = k;
        for (std::size_t row = k + 1; row < n; ++row)
            if (std::abs(matrix[row * m_stride + k]) > std::abs(matrix[best * m_stride + k]))
                best = row;
        const double by = matrix[best * m_stride + k];
        if (std::abs(by) < 1e-11)
            return false;
        if (best != k) {
            std::swap_ranges(inverse(k), inverse(k) + m_stride, inverse(best));
            std::swap_ranges(
                &matrix[k * m_stride], &matrix[k * m_stride] + m_stride, &matrix[best * m_stride]);
        }
        for (std::size_t i = 0; i < m_stride; ++i) {
            matrix[k * m_stride + i] /= by;
            inverse(k)[i] /= by;
        }
        if (!budget.spend(static_cast<std::int64_t>(n * n / 4000)))
            return false;
        for (std::size_t row = 0; row < n; ++row) {
            const double factor = matrix[row * m_stride + k];
            if (row == k || factor == 0)
                continue;
            addScaled(&matrix[row * m_stride], &matrix[k * m_stride], m_stride, -factor);
            addScaled(inverse(row), inverse(k), m_stride, -factor);
        }
    }
    refresh();
    return true;
}

} // namespace miterbook::packing
