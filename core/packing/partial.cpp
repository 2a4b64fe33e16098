// SPDX-License-Identifier: GPL-3.0-or-later
#include "packing/partial.h"

#include <algorithm>

namespace miterbook::packing {

bool Partial::done() const {
    return std::all_of(demand.begin(), demand.end(), [](std::int64_t d) { return d == 0; });
}

std::int64_t Partial::repeats(const Column& column) const {
    std::int64_t times = limits.upper[column.bin];
    for (const auto& [kind, count] : column.cuts)
        times = std::min(times, demand[static_cast<std::size_t>(kind)] / count);
    return column.cuts.empty() ? 0 : times;
}

void Partial::take(const Column& column, std::int64_t times) {
    for (const auto& [kind, count] : column.cuts)
        demand[static_cast<std::size_t>(kind)] -= count * times;
    limits.upper[column.bin] -= times;
    limits.lower[column.bin] = std::max<std::int64_t>(0, limits.lower[column.bin] - times);
    fixed.cost += column.cost * times;
    fixed.columns.emplace_back(column, times);
}

Column Partial::trimmed(const Instance& instance, const Column& column) const {
    Column result{column.bin, {}, 0};
    for (const auto& [kind, count] : column.cuts) {
        const std::int64_t wanted = std::min(count, demand[static_cast<std::size_t>(kind)]);
        if (wanted > 0)
            result.cuts.emplace_back(kind, wanted);
    }
    result.cost = instance.cost(result.bin, instance.width(result));
    return result;
}

} // namespace miterbook::packing
