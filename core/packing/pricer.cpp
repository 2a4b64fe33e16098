// SPDX-License-Identifier: GPL-3.0-or-later
#include "packing/pricer.h"

#include "packing/wide.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numeric>

namespace miterbook::packing {

namespace {

// No stick holds more worth than this: the longest one, filled in order of worth per width.
double mostWorth(const Instance& instance, const Duals& duals, const Counts& demand) {
    std::vector<std::size_t> order(instance.kinds());
    std::iota(order.begin(), order.end(), 0);
    const auto density = [&](std::size_t kind) {
        return duals.piece[kind] / static_cast<double>(instance.widths()[kind]);
    };
    std::sort(order.begin(), order.end(),
        [&](std::size_t a, std::size_t b) { return density(a) > density(b); });
    auto room = static_cast<double>(instance.longestCapacity());
    double worth = 0;
    for (const std::size_t kind : order) {
        const auto width = static_cast<double>(instance.widths()[kind]);
        const double count = std::min(static_cast<double>(demand[kind]), room / width);
        worth += count * std::max(0.0, duals.piece[kind]);
        room -= count * width;
        if (room <= 0)
            break;
    }
    return worth;
}

} // namespace

Pricer::Pricer(const Instance& instance)
    : m_instance(instance)
    , m_fast(std::make_unique<DenseKnapsack<std::int32_t>>(instance.widths(),
          instance.longestCapacity())) {}

Pricer::~Pricer() = default;

template <typename Value>
Pricer::Best<Value> Pricer::best(const DenseKnapsack<Value>& knapsack, std::size_t bin,
    double scale) const {
    const std::int64_t capacity = m_instance.bins()[bin].capacity;
    if (!m_instance.salvages()) {
        const double cost = static_cast<double>(m_instance.bins()[bin].price) * scale;
        return {static_cast<Value>(knapsack.best(capacity) - static_cast<Value>(cost)),
            knapsack.cuts(capacity)};
    }
    Value gain = std::numeric_limits<Value>::lowest();
    std::int64_t best = 0;
    for (std::int64_t at = 0; at <= capacity; ++at) {
        const double cost = static_cast<double>(m_instance.cost(bin, at)) * scale;
        const auto here = static_cast<Value>(knapsack.best(at) - static_cast<Value>(cost));
        if (here <= gain)
            continue;
        gain = here;
        best = at;
    }
    return {gain, knapsack.cuts(best)};
}

template <typename Value>
Pricer::Best<Value> Pricer::bestAllowed(const DenseKnapsack<Value>& knapsack, std::size_t bin,
    double scale) const {
    Best<Value> first = best(knapsack, bin, scale);
    const auto forbidden = [&](const auto& cuts) {
        return std::any_of(m_forbidden.begin(), m_forbidden.end(),
            [&](const Column& column) { return column.bin == bin && column.cuts == cuts; });
    };
    if (m_instance.salvages() || !forbidden(first.cuts))
        return first;
    const double cost = static_cast<double>(m_instance.bins()[bin].price) * scale;
    auto next = knapsack.bestBut(m_instance.bins()[bin].capacity, forbidden);
    if (!next)
        return {static_cast<Value>(-static_cast<Value>(cost)), {}};
    return {static_cast<Value>(next->first - static_cast<Value>(cost)), std::move(next->second)};
}

// Where columns are forbidden every piece is worth at least the smallest amount, so that no
// choice is overlooked that differs from a forbidden one by worthless pieces only.
template <typename Value>
std::vector<Value> Pricer::scaled(const Duals& duals, const Counts& demand, double scale) const {
    std::vector<Value> values(duals.piece.size());
    for (std::size_t kind = 0; kind < values.size(); ++kind) {
        values[kind] = static_cast<Value>(std::max(0.0, duals.piece[kind]) * scale);
        if (!m_forbidden.empty() && demand[kind] > 0)
            values[kind] = std::max<Value>(values[kind], 1);
    }
    return values;
}

std::optional<std::vector<Column>> Pricer::columns(const Duals& duals, const Counts& demand,
    const StickLimits& limits, Budget& budget) {
    double dearest = 1;
    for (const Bin& bin : m_instance.bins())
        dearest = std::max(dearest, static_cast<double>(bin.price));
    const double most = std::max(mostWorth(m_instance, duals, demand), dearest);
    const double scale = 1e9 / most;
    const auto values = scaled<std::int32_t>(duals, demand, scale);
    m_estimate = 0;
    for (std::size_t kind = 0; kind < values.size(); ++kind)
        m_estimate += duals.piece[kind] * static_cast<double>(demand[kind]);
    if (!m_fast->run(values, demand, budget))
        return std::nullopt;
    std::vector<Column> found;
    for (std::size_t bin = 0; bin < m_instance.bins().size(); ++bin) {
        auto [gain, cuts] = bestAllowed(*m_fast, bin, scale);
        const double reduced = -static_cast<double>(gain) / scale;
        m_estimate += reduced * static_cast<double>(reduced < 0 ? limits.upper[bin] : limits.lower[bin]);
        if (limits.upper[bin] == 0 || reduced - duals.stick[bin] > -4 / scale)
            continue;
        Column column{bin, std::move(cuts), 0};
        column.cost = m_instance.cost(bin, m_instance.width(column));
        found.push_back(std::move(column));
    }
    return found;
}

std::optional<std::int64_t> Pricer::bound(const Duals& duals, const Counts& demand,
    const StickLimits& limits, Budget& budget) {
    if (!m_exact)
        m_exact = std::make_unique<DenseKnapsack<std::int64_t>>(m_instance.widths(),
            m_instance.longestCapacity());
    // Scaled by a power of two, so that prices stay exact.
    double top = std::max(1.0, mostWorth(m_instance, duals, demand));
    for (std::size_t bin = 0; bin < m_instance.bins().size(); ++bin)
        top = std::max(top, static_cast<double>(m_instance.bins()[bin].price));
    const int bits = 60 - static_cast<int>(std::ceil(std::log2(top)));
    if (bits < 0)
        return 0;
    const double scale = std::ldexp(1.0, bits);
    const auto values = scaled<std::int64_t>(duals, demand, scale);
    Wide sum = 0;
    for (std::size_t kind = 0; kind < values.size(); ++kind)
        sum += static_cast<Wide>(values[kind]) * demand[kind];
    if (!m_exact->run(values, demand, budget))
        return std::nullopt;
    for (std::size_t bin = 0; bin < m_instance.bins().size(); ++bin) {
        const std::int64_t gain = bestAllowed(*m_exact, bin, scale).gain;
        sum -= static_cast<Wide>(gain) * (gain > 0 ? limits.upper[bin] : limits.lower[bin]);
    }
    if (sum <= 0)
        return 0;
    const auto unit = static_cast<Wide>(1) << bits;
    const Wide step = std::max<std::int64_t>(m_instance.priceStep(), 1);
    return static_cast<std::int64_t>((sum + unit * step - 1) / (unit * step) * step);
}

} // namespace miterbook::packing
