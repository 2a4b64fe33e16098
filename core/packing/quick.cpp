// SPDX-License-Identifier: GPL-3.0-or-later
#include "packing/quick.h"

#include "packing/greedy.h"
#include "packing/sequence.h"
#include "packing/wide.h"

#include <algorithm>
#include <numeric>

namespace miterbook::packing {

namespace {

constexpr std::int64_t workOfOne = 40'000;
constexpr std::int64_t mostQuickCells = 2'000'000; // of a knapsack table worth building in a hurry

} // namespace

bool better(const Packing& a, const Packing& b) {
    if (a.missingWidth != b.missingWidth)
        return a.missingWidth < b.missingWidth;
    return a.cost < b.cost;
}

Packing quickPacking(const Instance& instance, Budget& budget) {
    LargestFirst largestFirst(instance);
    Packing best = fillGreedily(instance, Remaining(instance), largestFirst);
    using Knapsack = DenseKnapsack<std::int32_t>;
    if (Knapsack::cells(instance.kinds(), instance.longestCapacity()) > mostQuickCells)
        return best;
    for (const double bonus : {0.05, 0.4}) {
        Budget part = budget.part(workOfOne);
        WorthiestFirst worthiest(instance, bonus, part);
        Packing packing = fillGreedily(instance, Remaining(instance), worthiest);
        if (better(packing, best))
            best = std::move(packing);
    }
    return best;
}

std::int64_t simpleBound(const Instance& instance) {
    // Free and limited sticks take their full capacity off the work, dearest last.
    std::int64_t width = 0;
    for (std::size_t kind = 0; kind < instance.kinds(); ++kind)
        width += instance.widths()[kind] * instance.demand()[kind];
    if (instance.salvages())
        return 0; // a remainder may bring back all that a stick costs
    std::vector<const Bin*> order;
    for (const Bin& bin : instance.bins())
        order.push_back(&bin);
    std::stable_sort(order.begin(), order.end(), [](const Bin* a, const Bin* b) {
        return static_cast<Wide>(a->price) * b->capacity
            < static_cast<Wide>(b->price) * a->capacity;
    });
    Wide cost = 0;
    for (const Bin* bin : order) {
        const Wide room = static_cast<Wide>(bin->capacity) * bin->available;
        if (room < width) {
            cost += static_cast<Wide>(bin->price) * bin->available;
            width -= static_cast<std::int64_t>(room);
            continue;
        }
        // Part of a stick is enough for a bound, rounded up to whole price steps.
        cost += (static_cast<Wide>(bin->price) * width + bin->capacity - 1) / bin->capacity;
        break;
    }
    const std::int64_t step = std::max<std::int64_t>(instance.priceStep(), 1);
    return static_cast<std::int64_t>((cost + step - 1) / step * step);
}

} // namespace miterbook::packing
