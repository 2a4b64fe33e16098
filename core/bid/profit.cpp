// SPDX-License-Identifier: GPL-3.0-or-later
#include "bid/profit.h"

#include "basics/number_text.h"

namespace miterbook {

namespace {

Error unreachable(Percent margin) {
    return badInput("A margin on price of " + formatPercent(margin)
        + " % cannot be reached: it has to be under 100 %.");
}

Percent asShare(Money part, Money of) {
    if (of <= Money())
        return {};
    return Percent::basisPoints(
        roundedQuotient(Wide(part.cents()) * Percent::hundred().basisPoints(), of.cents()));
}

} // namespace

Money priceAtMarkup(Money cost, Percent markup) {
    return cost + share(cost, markup);
}

Result<Money> priceAtMargin(Money cost, Percent margin) {
    if (margin >= Percent::hundred())
        return unreachable(margin);
    return Money::cents(roundedQuotient(Wide(cost.cents()) * Percent::hundred().basisPoints(),
        (Percent::hundred() - margin).basisPoints()));
}

Result<Percent> markupFor(Percent margin) {
    if (margin >= Percent::hundred())
        return unreachable(margin);
    return Percent::basisPoints(
        roundedQuotient(Wide(margin.basisPoints()) * Percent::hundred().basisPoints(),
            (Percent::hundred() - margin).basisPoints()));
}

Percent markupOf(Money cost, Money price) {
    return asShare(price - cost, cost);
}

Percent marginOf(Money cost, Money price) {
    return asShare(price - cost, price);
}

} // namespace miterbook
