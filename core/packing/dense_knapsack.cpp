// SPDX-License-Identifier: GPL-3.0-or-later
#include "packing/dense_knapsack.h"

#include "packing/vector_loops.h"

#include <algorithm>

namespace miterbook::packing {

template <typename Value>
DenseKnapsack<Value>::DenseKnapsack(const Counts& widths, std::int64_t capacity)
    : m_widths(widths)
    , m_capacity(capacity)
    , m_stride(static_cast<std::size_t>(capacity) + 1)
    , m_table(m_stride * (widths.size() + 2), 0) {}

// Copies are added in powers of two, so that few passes give every number up to the limit. The
// passes swap between the row and the scratch row and end in the row.
template <typename Value>
void DenseKnapsack<Value>::addKind(const Value* before, Value* after, std::int64_t width,
    Value value, std::int64_t limit) {
    std::int64_t passes = 0;
    for (std::int64_t left = limit, chunk = 1; left > 0; left -= chunk, chunk *= 2, ++passes)
        chunk = std::min(chunk, left);
    Value* const scratch = row(m_widths.size() + 1);
    const Value* from = before;
    for (std::int64_t left = limit, chunk = 1; left > 0; chunk *= 2, --passes) {
        chunk = std::min(chunk, left);
        Value* const to = passes % 2 == 1 ? after : scratch;
        addCopies(to, from, m_capacity + 1, width * chunk, static_cast<Value>(value * chunk));
        from = to;
        left -= chunk;
    }
}

template <typename Value>
bool DenseKnapsack<Value>::run(const std::vector<Value>& values, const Counts& limits,
    Budget& budget) {
    m_steps.clear();
    m_last = row(m_widths.size()); // zeros
    for (std::size_t kind = 0; kind < m_widths.size(); ++kind) {
        const std::int64_t width = m_widths[kind];
        const std::int64_t limit = std::min(limits[kind], m_capacity / width);
        if (values[kind] <= 0 || limit <= 0)
            continue;
        m_steps.push_back({kind, limit, values[kind], m_last});
        addKind(m_last, row(kind), width, values[kind], limit);
        m_last = row(kind);
        const std::int64_t vectors = (m_capacity - width) / (limit > 1 ? 2000 : 4000);
        if (!budget.spend(1 + vectors))
            return false;
    }
    return true;
}

template <typename Value>
std::vector<std::pair<int, std::int64_t>> DenseKnapsack<Value>::cuts(std::int64_t capacity) const {
    std::vector<std::pair<int, std::int64_t>> result;
    const Value* here = m_last;
    for (auto step = m_steps.rbegin(); step != m_steps.rend(); ++step) {
        std::int64_t count = 0;
        Value wanted = here[capacity];
        std::int64_t at = capacity;
        while (step->before[at] != wanted) { // the row holds what some number of copies gave
            ++count;
            at -= m_widths[step->kind];
            wanted = static_cast<Value>(wanted - step->value);
        }
        if (count > 0)
            result.emplace_back(static_cast<int>(step->kind), count);
        capacity = at;
        here = step->before;
    }
    std::reverse(result.begin(), result.end());
    return result;
}

template class DenseKnapsack<std::int32_t>;
template class DenseKnapsack<std::int64_t>;

} // namespace miterbook::packing
