// SPDX-License-Identifier: GPL-3.0-or-later
#include "bid/goods_cost.h"

#include <map>

namespace miterbook {

namespace {

void sayUnpriced(const std::map<PartUse, int>& unpriced, std::vector<std::string>& problems) {
    for (const auto& [use, count] : unpriced)
        problems.push_back("The book has no price for \"" + std::string(word(use)) + "\"; "
            + std::to_string(count) + " of them cost nothing here.");
}

} // namespace

PerWork<Money> goodsCosts(const Takeoff& takeoff, const PriceBook& prices, const Coverage& coverage,
    std::vector<std::string>& problems) {
    PerWork<Money> costs;
    std::map<PartUse, int> unpriced;
    for (const PartCount& count : takeoff.parts) {
        const Part* part = prices.part(count.use);
        if (!part)
            unpriced[count.use] += count.count;
        else if (!part->builderSupplies)
            costs.at(count.work, coverage.half(count.work, count.source)) += part->price
                * count.count;
    }
    for (const BoughtGoods& goods : takeoff.goods)
        costs.at(goods.work, Half::byCost) += goods.cost;
    sayUnpriced(unpriced, problems);
    return costs;
}

PerWork<Money> consumableCosts(const PerWork<Length>& running, const PriceBook& prices) {
    const Length feet = running.sum();
    Money total;
    for (const auto& [id, consumable] : prices.of<Consumable>()) {
        if (consumable.feetEach > 0)
            total += Money::cents(roundedQuotient(Wide(feet.nm()) * consumable.price.cents(),
                Wide(Length::feet(1).nm()) * consumable.feetEach));
    }
    return shareOut(total, running);
}

} // namespace miterbook
