// SPDX-License-Identifier: GPL-3.0-or-later
#include "packing/tidiest.h"

#include "packing/wide.h"

#include <algorithm>
#include <numeric>

namespace miterbook::packing {

namespace {

constexpr int stepsPerUnit = 8;
constexpr std::size_t mostKinds = 14;
constexpr std::int64_t mostPieces = 40;

} // namespace

Tidiest::Tidiest(const Instance& instance, Incumbent& incumbent, Budget& budget)
    : m_instance(instance)
    , m_incumbent(incumbent)
    , m_budget(budget)
    , m_cost(incumbent.packing().cost) {
}

bool Tidiest::hopeful(const Instance& instance) {
    const Counts& demand = instance.demand();
    return demand.size() <= mostKinds
        && std::accumulate(demand.begin(), demand.end(), std::int64_t{0}) <= mostPieces;
}

void Tidiest::run() {
    State start;
    start.demand = m_instance.demand();
    for (std::size_t kind = 0; kind < start.demand.size(); ++kind)
        start.width += start.demand[kind] * m_instance.widths()[kind];
    for (const Bin& bin : m_instance.bins())
        start.available.push_back(bin.available);
    start.packing.missing.assign(start.demand.size(), 0);
    const std::size_t most = m_incumbent.packing().columns.size();
    for (std::size_t patterns = 1; patterns <= most && !m_found; ++patterns)
        if (!visit(start, patterns))
            return;
}

// The rest at the lowest price per width that is to be had: more than may be spent?
bool Tidiest::tooDear(const State& state) const {
    const std::int64_t left = m_cost - state.packing.cost;
    if (left < 0)
        return true;
    if (m_instance.salvages())
        return false;
    return std::none_of(m_instance.bins().begin(), m_instance.bins().end(), [&](const Bin& bin) {
        return static_cast<Wide>(bin.price) * state.width <= static_cast<Wide>(left) * bin.capacity
            && state.available[static_cast<std::size_t>(&bin - m_instance.bins().data())] > 0;
    });
}

// So many patterns at most for what is left. The widest piece left is on the next one. False
// when the budget ended.
bool Tidiest::visit(State& state, std::size_t patterns) {
    if (++m_steps % stepsPerUnit == 0 && !m_budget.spend(1))
        return false;
    if (tooDear(state))
        return true;
    if (patterns == 1)
        return finish(state);
    std::size_t widest = 0;
    while (state.demand[widest] == 0)
        ++widest;
    for (std::size_t bin = 0; bin < m_instance.bins().size(); ++bin) {
        const std::int64_t most = std::min(state.demand[widest], state.available[bin]);
        const std::int64_t capacity = m_instance.bins()[bin].capacity;
        for (std::int64_t times = 1; times <= most; ++times) {
            const std::int64_t fit = std::min(
                state.demand[widest] / times, capacity / m_instance.widths()[widest]);
            for (std::int64_t count = 1; count <= fit && !m_budget.exhausted(); ++count) {
                Column column{bin, {{static_cast<int>(widest), count}}, 0};
                choose(state, patterns, column, times, widest + 1,
                    capacity - count * m_instance.widths()[widest]);
            }
        }
    }
    return !m_budget.exhausted();
}

// Everything that is left, on equal sticks.
bool Tidiest::finish(State& state) {
    std::int64_t common = 0;
    for (const std::int64_t count : state.demand)
        common = std::gcd(common, count);
    for (std::size_t bin = 0; bin < m_instance.bins().size(); ++bin) {
        const std::int64_t most = std::min(common, state.available[bin]);
        for (std::int64_t times = 1; times <= most; ++times) {
            if (common % times != 0 || state.width / times > m_instance.bins()[bin].capacity)
                continue;
            Column column{bin, {}, 0};
            for (std::size_t kind = 0; kind < state.demand.size(); ++kind)
                if (state.demand[kind] > 0)
                    column.cuts.emplace_back(static_cast<int>(kind), state.demand[kind] / times);
            take(state, 0, column, times);
        }
    }
    return true;
}

// Counts of the kinds from this one on, every possible number of each.
void Tidiest::choose(State& state, std::size_t patterns, Column& column, std::int64_t times,
    std::size_t kind, std::int64_t room) {
    while (kind < state.demand.size()
        && (state.demand[kind] < times || m_instance.widths()[kind] > room))
        ++kind;
    if (kind == state.demand.size()) {
        take(state, patterns - 1, column, times);
        return;
    }
    const std::int64_t width = m_instance.widths()[kind];
    const std::int64_t most = std::min(state.demand[kind] / times, room / width);
    for (std::int64_t count = most; count >= 0 && !m_budget.exhausted(); --count) {
        if (count > 0)
            column.cuts.emplace_back(static_cast<int>(kind), count);
        choose(state, patterns, column, times, kind + 1, room - count * width);
        if (count > 0)
            column.cuts.pop_back();
    }
}

// Uses a column so often, goes on from there, and puts everything back.
bool Tidiest::take(State& state, std::size_t patterns, const Column& column, std::int64_t times) {
    const std::int64_t width = m_instance.width(column);
    const std::int64_t cost = m_instance.cost(column.bin, width) * times;
    const auto book = [&](std::int64_t by) {
        state.packing.cost += cost * by;
        state.available[column.bin] -= times * by;
        state.width -= width * times * by;
        for (const auto& [kind, count] : column.cuts)
            state.demand[static_cast<std::size_t>(kind)] -= count * times * by;
    };
    book(1);
    bool goOn = true;
    if (state.width == 0 || patterns > 0) {
        state.packing.columns.emplace_back(column, times);
        state.packing.columns.back().first.cost = cost / times;
        if (state.width > 0) {
            goOn = visit(state, patterns);
        } else if (state.packing.cost == m_cost) {
            m_found = true;
            m_incumbent.offer(state.packing);
        }
        state.packing.columns.pop_back();
    }
    book(-1);
    return goOn;
}

} // namespace miterbook::packing
