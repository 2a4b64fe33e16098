// SPDX-License-Identifier: GPL-3.0-or-later
#include "packing/greedy.h"

#include "packing/wide.h"

#include <algorithm>
#include <functional>

namespace miterbook::packing {

Remaining::Remaining(const Instance& instance)
    : demand(instance.demand()) {
    for (const Bin& bin : instance.bins())
        available.push_back(bin.available);
}

std::int64_t Remaining::repeats(const Column& column) const {
    std::int64_t times = available[column.bin];
    for (const auto& [kind, count] : column.cuts)
        times = std::min(times, demand[static_cast<std::size_t>(kind)] / count);
    return times;
}

void Remaining::take(const Column& column, std::int64_t times) {
    available[column.bin] -= times;
    for (const auto& [kind, count] : column.cuts)
        demand[static_cast<std::size_t>(kind)] -= count * times;
}

namespace {

// Whether a costs less per width than b; free sticks compare by how full they get.
struct Offer {
    Column column;
    std::int64_t width = 0;
    std::int64_t capacity = 0;

    bool beats(const Offer& other) const {
        const auto mine = static_cast<Wide>(column.cost) * other.width;
        const auto theirs = static_cast<Wide>(other.column.cost) * width;
        if (mine != theirs)
            return mine < theirs;
        return static_cast<Wide>(width) * other.capacity
            > static_cast<Wide>(other.width) * capacity;
    }
};

std::optional<Column> bestOffer(
    const Instance& instance, const Remaining& remaining, Filler& filler) {
    std::optional<Offer> best;
    for (std::size_t bin = 0; bin < instance.bins().size(); ++bin) {
        if (remaining.available[bin] == 0)
            continue;
        Offer offer{filler.fill(bin), 0, instance.bins()[bin].capacity};
        if (offer.column.cuts.empty())
            continue;
        offer.width = instance.width(offer.column);
        if (!best || offer.beats(*best))
            best = std::move(offer);
    }
    if (!best)
        return std::nullopt;
    return std::move(best->column);
}

// The cheapest single stick that takes everything that is left, which is so wide.
std::optional<Column> lastStick(
    const Instance& instance, const Remaining& remaining, std::int64_t width) {
    if (width > instance.longestCapacity())
        return std::nullopt;
    Column all;
    for (std::size_t kind = 0; kind < remaining.demand.size(); ++kind)
        if (remaining.demand[kind] > 0)
            all.cuts.emplace_back(static_cast<int>(kind), remaining.demand[kind]);
    std::optional<Column> best;
    for (std::size_t bin = 0; bin < instance.bins().size(); ++bin) {
        if (remaining.available[bin] == 0 || instance.bins()[bin].capacity < width)
            continue;
        all.bin = bin;
        all.cost = instance.cost(bin, width);
        if (!best || all.cost < best->cost)
            best = all;
    }
    return best;
}

} // namespace

Packing fillGreedily(const Instance& instance, Remaining remaining, Filler& filler) {
    Packing packing;
    std::int64_t width = 0; // of all that is left
    for (std::size_t kind = 0; kind < remaining.demand.size(); ++kind)
        width += remaining.demand[kind] * instance.widths()[kind];
    while (width > 0 && filler.prepare(remaining)) {
        std::optional<Column> column = bestOffer(instance, remaining, filler);
        if (!column)
            break;
        if (auto last = lastStick(instance, remaining, width);
            last && last->cost >= column->cost && instance.width(*column) < instance.width(*last))
            column = std::move(last);
        const std::int64_t times = std::max<std::int64_t>(remaining.repeats(*column), 1);
        remaining.take(*column, times);
        width -= instance.width(*column) * times;
        packing.cost += column->cost * times;
        packing.columns.emplace_back(std::move(*column), times);
    }
    packing.missing = remaining.demand;
    packing.missingWidth = width;
    return packing;
}

bool LargestFirst::prepare(const Remaining& remaining) {
    m_remaining = &remaining;
    return true;
}

// Demands only fall, so what has been skipped once is skipped for good.
std::size_t LargestFirst::wanted(std::size_t kind) {
    const Counts& demand = m_remaining->demand;
    std::size_t end = kind;
    while (end < demand.size() && demand[end] == 0)
        end = std::max(m_next[end], end + 1);
    while (kind < end) {
        const std::size_t next = std::max(m_next[kind], kind + 1);
        m_next[kind] = end;
        kind = next;
    }
    return end;
}

Column LargestFirst::fill(std::size_t bin) {
    Column column{bin, {}, 0};
    std::int64_t left = m_instance.bins()[bin].capacity;
    const Counts& widths = m_instance.widths();
    for (std::size_t kind = wanted(0); kind < widths.size();) {
        if (widths[kind] > left) { // on to the first that fits
            const auto from = widths.begin() + static_cast<std::ptrdiff_t>(kind);
            const auto fits = std::lower_bound(from, widths.end(), left, std::greater());
            kind = wanted(static_cast<std::size_t>(fits - widths.begin()));
            continue;
        }
        const std::int64_t count = std::min(m_remaining->demand[kind], left / widths[kind]);
        column.cuts.emplace_back(static_cast<int>(kind), count);
        left -= count * widths[kind];
        kind = wanted(kind + 1);
    }
    column.cost = m_instance.cost(bin, m_instance.bins()[bin].capacity - left);
    return column;
}

} // namespace miterbook::packing
