// SPDX-License-Identifier: GPL-3.0-or-later
#include "packing/sequence.h"

#include <cmath>

namespace miterbook::packing {

WorthiestFirst::WorthiestFirst(const Instance& instance, double bonus, Budget& budget)
    : m_instance(instance)
    , m_budget(budget)
    , m_knapsack(instance.widths(), instance.longestCapacity()) {
    constexpr double top = 1 << 28; // a full stick with every bonus stays below 2^31
    const auto capacity = static_cast<double>(instance.longestCapacity());
    for (const std::int64_t width : instance.widths()) {
        const double part = static_cast<double>(width) / capacity;
        m_worth.push_back(static_cast<std::int32_t>(std::lround(top * part * (1 + bonus * part))));
    }
}

bool WorthiestFirst::prepare(const Remaining& remaining) {
    return m_knapsack.run(m_worth, remaining.demand, m_budget);
}

Column WorthiestFirst::fill(std::size_t bin) {
    Column column{bin, m_knapsack.cuts(m_instance.bins()[bin].capacity), 0};
    column.cost = m_instance.cost(bin, m_instance.width(column));
    return column;
}

} // namespace miterbook::packing
