// SPDX-License-Identifier: GPL-3.0-or-later
#include "book/stick_prices.h"

#include <algorithm>
#include <map>

namespace miterbook {

Money priceOfStick(Length length, UnitPrice quoted, PricePer per) {
    if (per == PricePer::stick)
        return Money::cents(roundedQuotient(quoted.tenThousandths(), 100));
    constexpr std::int64_t metre = Length::millimetres(1000).nm();
    const std::int64_t foot = Length::feet(1).nm();
    const std::int64_t one = per == PricePer::metre ? metre
        : per == PricePer::hundredFeet              ? 100 * foot
                                                    : foot;
    return Money::cents(
        roundedQuotient(Wide(quoted.tenThousandths()) * length.nm(), Wide(100) * one));
}

Money stickPriceOn(const PriceBook& prices, const Stick& stick, Date day) {
    const StickPrice* last = nullptr;
    for (const auto& [id, price] : prices.of<StickPrice>()) {
        const bool begun = !day.ok() || price.from <= day;
        if (price.stick == stick.id && begun && (!last || last->from < price.from))
            last = &price;
    }
    return last ? last->price : stick.price;
}

std::vector<StickPrice> priceHistory(const PriceBook& prices, Id<Stick> stick) {
    std::vector<StickPrice> history;
    for (const auto& [id, price] : prices.of<StickPrice>()) {
        if (price.stick == stick)
            history.push_back(price);
    }
    std::ranges::sort(history, {}, &StickPrice::from);
    return history;
}

PriceBook pricesInForce(const PriceBook& prices) {
    PriceBook now = prices;
    if (prices.of<StickPrice>().empty())
        return now;
    std::map<Id<Stick>, const StickPrice*> last; // once over what may be years of lists
    for (const auto& [id, price] : prices.of<StickPrice>()) {
        if (prices.day().ok() && price.from > prices.day())
            continue;
        const StickPrice*& held = last[price.stick];
        if (!held || held->from < price.from)
            held = &price;
    }
    for (const auto& [id, price] : last) {
        if (const Stick* stick = prices.of<Stick>().find(id)) {
            Stick priced = *stick;
            priced.price = price->price;
            now.of<Stick>().put(priced);
        }
    }
    now.of<StickPrice>() = Table<StickPrice>();
    return now;
}

} // namespace miterbook
