// SPDX-License-Identifier: GPL-3.0-or-later
#include "packing/dense_knapsack.h"

#include "packing/vector_loops.h"

#include <algorithm>
#include <bit>
#include <queue>

namespace miterbook::packing {

namespace {

constexpr std::size_t mostWalks = 30'000;

} // namespace

template <typename Value>
DenseKnapsack<Value>::DenseKnapsack(const Counts& widths, std::int64_t capacity)
    : m_widths(widths)
    , m_capacity(capacity)
    , m_stride(static_cast<std::size_t>(capacity) + 1)
    , m_table(std::make_unique_for_overwrite<Value[]>(m_stride * (widths.size() + 2))) {
    std::fill_n(row(widths.size()), m_stride, Value{0});
}

// Copies are added in powers of two, so that few passes give every number up to the limit. The
// passes swap between the row and the scratch row and end in the row.
template <typename Value>
void DenseKnapsack<Value>::addKind(
    const Value* before, Value* after, std::int64_t width, Value value, std::int64_t limit) {
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
bool DenseKnapsack<Value>::run(
    const std::vector<Value>& values, const Counts& limits, Budget& budget) {
    m_steps.clear();
    m_last = row(m_widths.size()); // zeros
    for (std::size_t kind = 0; kind < m_widths.size(); ++kind) {
        const std::int64_t width = m_widths[kind];
        const std::int64_t limit = width > 0 ? std::min(limits[kind], m_capacity / width)
                                             : limits[kind];
        if (values[kind] <= 0 || limit <= 0)
            continue;
        m_steps.push_back({kind, limit, values[kind], m_last});
        addKind(m_last, row(kind), width, values[kind], limit);
        m_last = row(kind);
        const std::int64_t passes = std::bit_width(static_cast<std::uint64_t>(limit));
        const auto bytes = static_cast<std::int64_t>(sizeof(Value)) * (m_capacity - width);
        if (!budget.spend(1 + passes * bytes / 10'000))
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

// Best first: the table says exactly what each unfinished walk can still reach, so choices come
// out in falling order of value.
template <typename Value>
auto DenseKnapsack<Value>::bestBut(
    std::int64_t capacity, const std::function<bool(const Cuts&)>& refused, Budget& budget) const
    -> std::optional<std::pair<Value, Cuts>> {
    std::vector<Walk> walks{{m_last[capacity], 0, m_steps.size(), capacity, 0, -1}};
    const auto less = [&](int a, int b) {
        const Walk& x = walks[static_cast<std::size_t>(a)];
        const Walk& y = walks[static_cast<std::size_t>(b)];
        return x.most != y.most ? x.most < y.most : x.steps > y.steps;
    };
    std::priority_queue<int, std::vector<int>, decltype(less)> open(less);
    open.push(0);
    while (!open.empty()) {
        const int at = open.top();
        const Walk walk = walks[static_cast<std::size_t>(at)];
        open.pop();
        if (walk.steps == 0) {
            Cuts cuts;
            for (int w = at; w > 0; w = walks[static_cast<std::size_t>(w)].parent)
                if (const Walk& here = walks[static_cast<std::size_t>(w)]; here.count > 0)
                    cuts.emplace_back(static_cast<int>(m_steps[here.steps].kind), here.count);
            budget.spend(10);
            if (!refused(cuts))
                return std::pair(walk.settled, std::move(cuts));
            continue;
        }
        const auto before = static_cast<std::int64_t>(walks.size());
        const Step& step = m_steps[walk.steps - 1];
        const std::int64_t width = m_widths[step.kind];
        for (std::int64_t count = 0; count <= step.limit && count * width <= walk.room; ++count) {
            const std::int64_t room = walk.room - count * width;
            const auto settled = static_cast<Value>(walk.settled + count * step.value);
            walks.push_back({static_cast<Value>(settled + step.before[room]), settled,
                walk.steps - 1, room, count, at});
            open.push(static_cast<int>(walks.size()) - 1);
        }
        const auto pushed = static_cast<std::int64_t>(walks.size()) - before;
        if (!budget.spend(2 + pushed / 2) || walks.size() > mostWalks)
            return std::pair(walk.most, Cuts{}); // not found, but no choice is better than this
    }
    return std::nullopt;
}

template class DenseKnapsack<std::int32_t>;
template class DenseKnapsack<std::int64_t>;

} // namespace miterbook::packing
