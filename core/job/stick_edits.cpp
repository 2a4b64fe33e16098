// SPDX-License-Identifier: GPL-3.0-or-later
#include "job/stick_edits.h"

#include "book/stick_prices.h"

namespace miterbook {

void putStick(EditBuilder& edit, IdSource& ids, Stick typed, Date day) {
    const PriceBook& prices = edit.book().prices;
    const Stick* held = prices.of<Stick>().find(typed.id);
    if (!typed.id)
        typed.id = ids.next<Stick>();
    const auto history = held ? priceHistory(prices, held->id) : std::vector<StickPrice>();
    if (!history.empty()) {
        if (typed.price != prices.priceOf(*held)) {
            StickPrice price{{}, held->id, day, typed.price, UnitPrice::cents(typed.price.cents()),
                PricePer::stick, {}};
            for (const StickPrice& each : history) {
                if (each.from == day)
                    price.id = each.id;
            }
            if (!price.id)
                price.id = ids.next<StickPrice>();
            edit.put(std::move(price));
        }
        typed.price = held->price;
    }
    edit.put(std::move(typed));
}

void removeStick(EditBuilder& edit, Id<Stick> stick) {
    for (const StickPrice& price : priceHistory(edit.book().prices, stick))
        edit.remove(price.id);
    edit.remove(stick);
}

} // namespace miterbook
