// SPDX-License-Identifier: GPL-3.0-or-later
#include "bid/work_money.h"

#include "bid/share_out.h"

namespace miterbook {

void shareOver(WorkMoney& to, Money amount, const WorkWeights& weights) {
    std::vector<std::int64_t> plain;
    plain.reserve(weights.size());
    for (const auto& [work, weight] : weights)
        plain.push_back(weight);
    const std::vector<Money> parts = shareOut(amount, plain);
    std::size_t i = 0;
    for (const auto& [work, weight] : weights)
        to[work] += parts[i++];
}

Money sum(const WorkMoney& amounts) {
    Money total;
    for (const auto& [work, amount] : amounts)
        total += amount;
    return total;
}

} // namespace miterbook
