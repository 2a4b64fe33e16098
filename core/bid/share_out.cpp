// SPDX-License-Identifier: GPL-3.0-or-later
#include "bid/share_out.h"

#include "bid/per_work.h"

#include <algorithm>
#include <cassert>
#include <numeric>

namespace miterbook {

namespace {

template <class T, class Whole>
PerWork<Money> shareOutBy(Money amount, const PerWork<T>& weights, Whole whole) {
    std::vector<std::int64_t> list;
    list.reserve(workCount * 2);
    for (const T& weight : weights)
        list.push_back(whole(weight));
    const std::vector<Money> parts = shareOut(amount, list);
    PerWork<Money> shares;
    std::ranges::copy(parts, shares.begin());
    return shares;
}

} // namespace

std::vector<Money> shareOut(Money amount, const std::vector<std::int64_t>& weights) {
    std::vector<Money> parts(weights.size());
    const Wide sum = std::accumulate(weights.begin(), weights.end(), Wide(0));
    if (weights.empty() || sum == 0) {
        assert(!weights.empty() || amount == Money());
        if (!weights.empty())
            parts.front() = amount;
        return parts;
    }
    const bool negative = amount < Money();
    const Wide cents = negative ? -Wide(amount.cents()) : Wide(amount.cents());
    std::vector<Wide> rest(weights.size());
    Wide left = cents;
    for (std::size_t i = 0; i < weights.size(); ++i) {
        assert(weights[i] >= 0);
        const Wide part = cents * weights[i] / sum;
        rest[i] = cents * weights[i] % sum;
        parts[i] = Money::cents(static_cast<std::int64_t>(part));
        left -= part;
    }
    std::vector<std::size_t> order(weights.size());
    std::iota(order.begin(), order.end(), std::size_t(0));
    std::ranges::stable_sort(
        order, [&](std::size_t a, std::size_t b) { return rest[a] > rest[b]; });
    for (std::size_t i = 0; left > 0; ++i, --left)
        parts[order[i]] += Money::cents(1);
    if (negative)
        std::ranges::transform(parts, parts.begin(), [](Money part) { return -part; });
    return parts;
}

PerWork<Money> shareOut(Money amount, const PerWork<Money>& weights) {
    return shareOutBy(amount, weights, [](Money money) { return money.cents(); });
}

PerWork<Money> shareOut(Money amount, const PerWork<Length>& weights) {
    return shareOutBy(amount, weights, [](Length length) { return length.nm(); });
}

} // namespace miterbook
