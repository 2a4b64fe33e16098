// SPDX-License-Identifier: GPL-3.0-or-later
#include "bid/price_rules.h"

#include "basics/number_text.h"

namespace miterbook {

namespace {

Money roundedUp(Money price, Money roundTo) {
    const std::int64_t over = price.cents() % roundTo.cents();
    return over == 0 ? price : Money::cents(price.cents() + roundTo.cents() - over);
}

} // namespace

RuledPrice ruledPrice(Money price, Money minimum, Money roundTo, std::string_view currency) {
    RuledPrice ruled{price, {}, {}};
    if (price <= Money())
        return ruled;
    if (price < minimum) {
        ruled.notes.push_back("The minimum job of " + formatMoney(minimum, currency)
            + " raises the price by " + formatMoney(minimum - price, currency) + ".");
        ruled.price = minimum;
    }
    if (roundTo > Money()) {
        const Money up = roundedUp(ruled.price, roundTo);
        if (up != ruled.price) {
            ruled.notes.push_back("Rounded up by " + formatMoney(up - ruled.price, currency)
                + " to a multiple of " + formatMoney(roundTo, currency) + ".");
        }
        ruled.price = up;
    }
    ruled.added = ruled.price - price;
    return ruled;
}

} // namespace miterbook
