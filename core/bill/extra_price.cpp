// SPDX-License-Identifier: GPL-3.0-or-later
#include "bill/extra_price.h"

#include "basics/quote.h"
#include "bid/profit.h"

namespace miterbook {

namespace {

Result<Hours> hoursFor(const ExtraLine& line, const PriceBook& prices) {
    if (unitOf(line.task) == Unit::hour)
        return Hours::minutes(roundedQuotient(Wide(line.quantity.thousandths()) * 60, 1000));
    const LabourRate* rate = prices.rate(line.task);
    if (!rate) {
        return badInput("The book has no labour rate for " + inQuotes(word(line.task))
            + "; price the extra by the hour.");
    }
    return Hours::minutes(
        roundedQuotient(Wide(line.quantity.thousandths()) * rate->minutes.hundredths(), 100'000));
}

} // namespace

Result<ExtraPrice> priceExtra(const std::vector<ExtraLine>& lines, const PriceBook& prices) {
    ExtraPrice sum;
    for (const ExtraLine& line : lines) {
        const auto hours = hoursFor(line, prices);
        if (!hours)
            return hours.error();
        sum.hours += *hours;
        sum.material += line.material;
    }
    sum.labour = Money::cents(
        roundedQuotient(Wide(sum.hours.minutes()) * prices.crewRate().cents(), 60));
    const Terms& terms = prices.terms();
    sum.overhead = share(sum.labour + sum.material, terms.overhead);
    if (terms.profitKind == ProfitKind::markupOnCost) {
        sum.price = priceAtMarkup(sum.cost(), terms.profit);
        return sum;
    }
    const auto price = priceAtMargin(sum.cost(), terms.profit);
    if (!price)
        return price.error();
    sum.price = *price;
    return sum;
}

} // namespace miterbook
