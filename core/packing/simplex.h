// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "packing/budget.h"

#include <cstdint>
#include <span>
#include <utility>
#include <vector>

namespace miterbook::packing {

// A small dense linear program, min c x, A x = b, x >= 0, by the revised simplex method with an
// explicit inverse of the basis. Columns and right-hand sides may change between runs; every
// run starts from the basis that the last one ended with.
class Simplex {
public:
    using Entry = std::pair<int, double>; // row, coefficient

    explicit Simplex(std::size_t rows);

    int addColumn(std::span<const Entry> entries, double cost);
    // Forgets the columns that are not kept; new numbers follow the old order. Basic ones stay.
    void keepOnly(const std::vector<char>& kept);
    bool basic(int column) const { return m_position[index(column)] >= 0; }
    // The first basis: one column for each row, each with a single entry of 1 or -1 in that row.
    void start(const std::vector<int>& basis);

    void setRhs(std::size_t row, double value) { m_rhs[row] = value; }
    void setCost(int column, double cost) { m_cost[index(column)] = cost; }
    void setBlocked(int column, bool blocked) { m_blocked[index(column)] = blocked; }
    bool blocked(int column) const { return m_blocked[index(column)]; }

    // Call after changes; then dual() until x >= 0 again and primal() for the cheapest x.
    void refresh();
    // Both return false when the budget ran out or the basis became useless.
    bool dual(Budget& budget);
    bool primal(Budget& budget);

    std::size_t rows() const { return m_rows; }
    std::size_t columns() const { return m_cost.size(); }
    double objective() const;
    double value(int column) const;
    double dualValue(std::size_t row) const { return m_dual[row]; }
    double cost(int column) const { return m_cost[index(column)]; }
    double reducedCost(int column) const;
    const std::vector<int>& basis() const { return m_basis; }
    // Reduced costs above minus this count as nothing to gain.
    void setTolerance(double tolerance) { m_tolerance = tolerance; }

private:
    static constexpr double smallPivot = 1e-7; // smaller ones would spoil the inverse

    static std::size_t index(int column) { return static_cast<std::size_t>(column); }
    double* inverse(std::size_t row) { return m_inverse.data() + row * m_stride; }
    const double* inverse(std::size_t row) const { return m_inverse.data() + row * m_stride; }
    double dot(int column, const double* rowVector) const;
    void direction(int column);
    int entering(Budget& budget);
    int leaving() const;
    int leavingDual() const;
    int enteringDual(std::size_t row, Budget& budget);
    bool pivot(std::size_t row, int column, double reduced, Budget& budget);
    bool invert(Budget& budget);
    bool settle(Budget& budget);
    void spreadCosts();
    bool dualSteps(Budget& budget);
    double residual() const;

    std::size_t m_rows;
    std::size_t m_stride; // rows rounded up to whole vectors
    std::vector<double> m_rhs;
    std::vector<double> m_cost;
    std::vector<double> m_trueCost; // while costs are spread
    std::vector<char> m_blocked;
    std::vector<std::size_t> m_first; // per column, where its entries begin
    std::vector<int> m_entryRow;
    std::vector<double> m_entryValue;
    std::vector<int> m_basis;    // per row, the column that is basic there
    std::vector<int> m_position; // per column, its row in the basis or -1
    std::vector<double> m_inverse;
    std::vector<double> m_basic; // value of the basic column, per row
    std::vector<double> m_dual;
    std::vector<double> m_direction;
    double m_tolerance = 1e-9;
    std::size_t m_scan = 0; // where pricing goes on
    int m_sinceInverted = 0;
    int m_stalled = 0;
};

} // namespace miterbook::packing
