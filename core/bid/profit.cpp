// SPDX-License-Identifier: GPL-3.0-or-later
#include "basics/number_text.h"
#include "bid/estimate.h"

namespace miterbook {

namespace {

Error unreachable(Percent margin) {
    return badInput("A margin on price of " + formatPercent(margin)
        + " % cannot be reached: it has to be under 100 %.");
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

} // namespace miterbook
