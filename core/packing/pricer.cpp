// SPDX-License-Identifier: GPL-3.0-or-later
#include "packing/pricer.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numeric>

namespace miterbook::packing {

namespace {

constexpr std::int64_t mostGridCells = 2'000'000;

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
    , m_grid(instance, mostGridCells)
    , m_fast(std::make_unique<DenseKnapsack<std::int32_t>>(
          m_grid.widths(), m_grid.capacity(instance.longestCapacity()))) {
}

Pricer::~Pricer() = default;

bool Pricer::refused(std::size_t bin, const std::vector<std::pair<int, std::int64_t>>& cuts) const {
    if (!m_grid.exact() && m_instance.width({bin, cuts, 0}) > m_instance.bins()[bin].capacity)
        return true;
    return std::any_of(m_forbidden.begin(), m_forbidden.end(),
        [&](const Column& column) { return column.bin == bin && column.cuts == cuts; });
}

template <typename Value>
Pricer::Best<Value> Pricer::best(
    const DenseKnapsack<Value>& knapsack, std::size_t bin, double scale, Budget& budget) const {
    if (m_instance.salvages())
        return bestCredited(knapsack, bin, scale);
    const std::int64_t capacity = m_grid.capacity(m_instance.bins()[bin].capacity);
    const auto cost = static_cast<Value>(static_cast<double>(m_instance.bins()[bin].price) * scale);
    auto cuts = knapsack.cuts(capacity);
    if (!refused(bin, cuts))
        return {static_cast<Value>(knapsack.best(capacity) - cost), std::move(cuts)};
    auto next = knapsack.bestBut(
        capacity, [&](const auto& other) { return refused(bin, other); }, budget);
    if (!next)
        return {static_cast<Value>(-cost), {}};
    return {static_cast<Value>(next->first - cost), std::move(next->second)};
}

// With credit for remainders a stick filled less may gain more. Forbidden columns are not kept
// out here: the bounds are the weaker for it, but no less true.
template <typename Value>
Pricer::Best<Value> Pricer::bestCredited(
    const DenseKnapsack<Value>& knapsack, std::size_t bin, double scale) const {
    const std::int64_t capacity = m_instance.bins()[bin].capacity;
    const std::int64_t cells = m_grid.capacity(capacity);
    Value gain = std::numeric_limits<Value>::lowest();
    std::int64_t best = 0;
    for (std::int64_t at = 0; at <= cells; ++at) {
        // What fills this many cells is at least as wide as this.
        const std::int64_t width = m_grid.leastWidth(at);
        const double cost = static_cast<double>(m_instance.cost(bin, width)) * scale;
        const auto here = static_cast<Value>(knapsack.best(at) - static_cast<Value>(cost));
        if (here <= gain)
            continue;
        gain = here;
        best = at;
    }
    auto cuts = knapsack.cuts(best);
    if (m_instance.width({bin, cuts, 0}) > capacity)
        cuts.clear();
    return {gain, std::move(cuts)};
}

// Where choices may be refused every piece is worth at least the smallest amount, so that no
// choice is overlooked that differs from a refused one by worthless pieces only.
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

// No stick takes more of a kind than this.
Counts Pricer::caps(const Counts& demand) const {
    Counts caps = demand;
    for (std::size_t kind = 0; kind < caps.size(); ++kind)
        caps[kind] = std::min(caps[kind], m_instance.longestCapacity() / m_instance.widths()[kind]);
    return caps;
}

// Takes the smallest pieces out until the rest fits.
void Pricer::repair(Column& column) const {
    std::int64_t width = m_instance.width(column);
    while (width > m_instance.bins()[column.bin].capacity) {
        width -= m_instance.widths()[static_cast<std::size_t>(column.cuts.back().first)];
        if (--column.cuts.back().second == 0)
            column.cuts.pop_back();
    }
}

std::int64_t Pricer::inCents(Wide sum, int bits) const {
    if (sum <= 0)
        return 0;
    const Wide step = std::max<std::int64_t>(m_instance.priceStep(), 1);
    const Wide unit = bits >= 0 ? step << bits : step;
    const Wide top = bits >= 0 ? sum : sum << -bits;
    return static_cast<std::int64_t>((top + unit - 1) / unit * step);
}

// Either the limits on sticks pay for columns worth too much, or all worth is scaled down until
// no column of an unlimited stick is (A. A. Farley, Operations Research 38, 1990). Rounding each
// scaled value down keeps a stick's worth at or below its own scaled worth rounded down.
void Pricer::certify(const std::vector<std::int32_t>& values,
    const std::vector<std::int64_t>& gains, const Counts& demand, const StickLimits& limits,
    int bits) {
    constexpr int fraction = 30;
    constexpr std::int64_t one = std::int64_t{1} << fraction;
    const std::vector<Bin>& bins = m_instance.bins();
    const auto cost = [&](std::size_t bin) {
        return static_cast<std::int64_t>(std::ldexp(static_cast<double>(bins[bin].price), bits));
    };
    const auto boundAt = [&](std::int64_t factor) {
        Wide sum = 0;
        for (std::size_t kind = 0; kind < demand.size(); ++kind)
            sum += static_cast<Wide>(values[kind] * factor >> fraction) * demand[kind];
        for (std::size_t bin = 0; bin < bins.size(); ++bin) {
            const std::int64_t worth = gains[bin] + cost(bin);
            const std::int64_t gain = (worth * factor >> fraction) - cost(bin);
            sum -= static_cast<Wide>(gain) * (gain > 0 ? limits.upper[bin] : limits.lower[bin]);
        }
        return inCents(sum, bits);
    };
    m_certified = m_instance.salvages() ? 0 : boundAt(one);
    std::int64_t factor = one;
    for (std::size_t bin = 0; bin < bins.size(); ++bin)
        if (!bins[bin].limited && gains[bin] > 0)
            factor = std::min(factor,
                static_cast<std::int64_t>(
                    static_cast<Wide>(cost(bin)) * one / (gains[bin] + cost(bin))));
    if (factor < one && !m_instance.salvages())
        m_certified = std::max(m_certified, boundAt(factor));
}

std::optional<std::vector<Column>> Pricer::columns(
    const Duals& duals, const Counts& demand, const StickLimits& limits, Budget& budget) {
    double most = std::max(1.0, mostWorth(m_instance, duals, demand));
    for (const Bin& bin : m_instance.bins())
        most = std::max(most, static_cast<double>(bin.price));
    const int bits = 30 - static_cast<int>(std::ceil(std::log2(most)));
    const double scale = std::ldexp(1.0, bits);
    const auto values = scaled<std::int32_t>(duals, demand, scale);
    if (!m_fast->run(values, caps(demand), budget))
        return std::nullopt;
    std::vector<Column> found;
    std::vector<std::int64_t> gains;
    for (std::size_t bin = 0; bin < m_instance.bins().size(); ++bin) {
        auto [gain, cuts] = best(*m_fast, bin, scale, budget);
        gains.push_back(gain);
        if (limits.upper[bin] == 0 || gain / scale + duals.stick[bin] < 4 / scale)
            continue;
        Column column{bin, std::move(cuts), 0};
        if (column.cuts.empty() && !m_grid.exact()) {
            column.cuts = m_fast->cuts(m_grid.capacity(m_instance.bins()[bin].capacity));
            repair(column);
        }
        column.cost = m_instance.cost(bin, m_instance.width(column));
        found.push_back(std::move(column));
    }
    certify(values, gains, demand, limits, bits);
    return found;
}

std::optional<std::int64_t> Pricer::bound(
    const Duals& duals, const Counts& demand, const StickLimits& limits, Budget& budget) {
    if (!m_exact)
        m_exact = std::make_unique<DenseKnapsack<std::int64_t>>(
            m_grid.widths(), m_grid.capacity(m_instance.longestCapacity()));
    // Scaled by a power of two, so that prices stay exact.
    double top = std::max(1.0, mostWorth(m_instance, duals, demand));
    for (std::size_t bin = 0; bin < m_instance.bins().size(); ++bin)
        top = std::max(top, static_cast<double>(m_instance.bins()[bin].price));
    const int bits = 60 - static_cast<int>(std::ceil(std::log2(top)));
    const double scale = std::ldexp(1.0, bits);
    const auto values = scaled<std::int64_t>(duals, demand, scale);
    Wide sum = 0;
    for (std::size_t kind = 0; kind < values.size(); ++kind)
        sum += static_cast<Wide>(values[kind]) * demand[kind];
    if (!m_exact->run(values, caps(demand), budget))
        return std::nullopt;
    for (std::size_t bin = 0; bin < m_instance.bins().size(); ++bin) {
        const std::int64_t gain = best(*m_exact, bin, scale, budget).gain;
        sum -= static_cast<Wide>(gain) * (gain > 0 ? limits.upper[bin] : limits.lower[bin]);
    }
    return inCents(sum, bits);
}

} // namespace miterbook::packing
