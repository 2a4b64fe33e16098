// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "packing/dense_knapsack.h"
#include "packing/grid.h"
#include "packing/instance.h"
#include "packing/wide.h"

#include <memory>
#include <optional>
#include <vector>

namespace miterbook::packing {

// What a linear program says things are worth, in cents.
struct Duals {
    std::vector<double> piece; // per kind, 0 or more
    std::vector<double> stick; // per bin: what one more such stick adds to the cost, any sign
};

// How many sticks of each kind may be used, and must be.
struct StickLimits {
    Counts lower;
    Counts upper;
};

// Finds columns worth more than they cost, and proves bounds.
class Pricer {
public:
    explicit Pricer(const Instance& instance);
    ~Pricer();

    // Columns that may not be used, until told otherwise.
    void forbid(const std::vector<Column>& columns) { m_forbidden = columns; }

    // For each bin the column with the most worth over cost, where that is positive.
    // Nothing when the budget ran out.
    std::optional<std::vector<Column>> columns(
        const Duals& duals, const Counts& demand, const StickLimits& limits, Budget& budget);
    // A certified bound in cents that the last columns() gave along with them; a little lower
    // than what bound() gets from the same duals.
    std::int64_t certified() const { return m_certified; }

    // A certified lower bound in cents for demand and limits, from these duals, in integer
    // arithmetic throughout. Nothing when the budget ran out.
    std::optional<std::int64_t> bound(
        const Duals& duals, const Counts& demand, const StickLimits& limits, Budget& budget);

private:
    template <typename Value>
    struct Best {
        Value gain = 0; // worth less cost, or more than any column has
        DenseKnapsack<Value>::Cuts cuts;
    };
    template <typename Value>
    std::vector<Value> scaled(const Duals& duals, const Counts& demand, double scale) const;
    template <typename Value>
    Best<Value> best(
        const DenseKnapsack<Value>& knapsack, std::size_t bin, double scale, Budget& budget) const;
    template <typename Value>
    Best<Value> bestCredited(
        const DenseKnapsack<Value>& knapsack, std::size_t bin, double scale) const;
    bool refused(std::size_t bin, const std::vector<std::pair<int, std::int64_t>>& cuts) const;
    Counts caps(const Counts& demand) const;
    void repair(Column& column) const;
    void certify(const std::vector<std::int32_t>& values, const std::vector<std::int64_t>& gains,
        const Counts& demand, const StickLimits& limits, int bits);
    std::int64_t inCents(Wide sum, int bits) const;

    const Instance& m_instance;
    Grid m_grid;
    std::vector<Column> m_forbidden;
    std::unique_ptr<DenseKnapsack<std::int32_t>> m_fast;
    std::unique_ptr<DenseKnapsack<std::int64_t>> m_exact;
    std::int64_t m_certified = 0;
};

} // namespace miterbook::packing
