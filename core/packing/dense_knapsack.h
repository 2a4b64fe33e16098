// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "packing/budget.h"
#include "packing/instance.h"

#include <cstdint>
#include <functional>
#include <memory>
#include <optional>
#include <vector>

namespace miterbook::packing {

// Bounded knapsack over all capacities at once: a table of one row per kind, each row computed
// from the one before in straight vector loops. Value is a whole number; sums must not overflow.
template <typename Value>
class DenseKnapsack {
public:
    DenseKnapsack(const Counts& widths, std::int64_t capacity);

    // values and limits per kind; kinds without value or limit take no part.
    // False when the budget ran out (then nothing may be asked).
    bool run(const std::vector<Value>& values, const Counts& limits, Budget& budget);

    // The best value that fits into capacity.
    Value best(std::int64_t capacity) const { return m_last[capacity]; }
    // The cuts that make it, kinds ascending.
    std::vector<std::pair<int, std::int64_t>> cuts(std::int64_t capacity) const;

    // The best of all choices that are not refused, and its value. After too many refusals, or
    // when the budget ends, no cuts, but a value that no choice exceeds. Nothing when every
    // choice is refused.
    using Cuts = std::vector<std::pair<int, std::int64_t>>;
    std::optional<std::pair<Value, Cuts>> bestBut(std::int64_t capacity,
        const std::function<bool(const Cuts&)>& refused, Budget& budget) const;

    static std::int64_t cells(std::size_t kinds, std::int64_t capacity) {
        return static_cast<std::int64_t>(kinds + 3) * (capacity + 1);
    }

private:
    Value* row(std::size_t index) { return m_table.get() + index * m_stride; }
    void addKind(
        const Value* before, Value* after, std::int64_t width, Value value, std::int64_t limit);

    struct Step {
        std::size_t kind;
        std::int64_t limit;
        Value value;
        const Value* before;
    };

    // Part of a walk back through the table: counts settled for the last kinds.
    struct Walk {
        Value most; // what the rest can still bring, added to what is settled
        Value settled;
        std::size_t steps; // to go
        std::int64_t room;
        std::int64_t count;
        int parent;
    };

    const Counts& m_widths;
    std::int64_t m_capacity;
    std::size_t m_stride;
    std::unique_ptr<Value[]> m_table; // rows: kinds, then a row of zeros, then scratch
    std::vector<Step> m_steps;
    const Value* m_last = nullptr;
};

extern template class DenseKnapsack<std::int32_t>;
extern template class DenseKnapsack<std::int64_t>;

} // namespace miterbook::packing
