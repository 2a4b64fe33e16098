// SPDX-License-Identifier: GPL-3.0-or-later
#include "bid/bid_setup.h"
#include "bid/scenario.h"

#include "book/check_parts.h"
#include "book/checks.h"

namespace miterbook {

namespace {

constexpr Money dearestAllowance = Money::dollars(1'000'000);

} // namespace

Result<void> checkBidSetup(const BidSetup& setup) {
    Checks checks;
    checks.require(setup.trips >= 0 && setup.trips <= 100, "A bid counts from 0 to 100 trips.")
        .require(setup.waste >= Percent() && setup.waste <= Percent::hundred(),
            "Waste is from 0 to 100 %.");
    for (const Allowance& allowance : setup.allowances) {
        checks.require(!isBlank(allowance.what), "Say what the allowance is for.")
            .between(allowance.amount, dearestAllowance, allowance.what + ": an allowance");
    }
    if (auto rules = checkPriceRules(setup.minimum, setup.roundTo); !rules)
        return rules;
    if (auto reserves = checkReserves(setup.contingency, setup.delivery); !reserves)
        return reserves;
    if (auto profit = checkProfit(setup.profitKind, setup.profit); !profit)
        return profit;
    if (auto overhead = checkOverhead(setup.overhead); !overhead)
        return overhead;
    return checks.result();
}

Pricing wayOf(const BidSetup& setup, Task task) {
    const bool other = std::ranges::count(setup.otherWay, OtherWay{task}) > 0;
    if (!other)
        return setup.pricing;
    return setup.pricing == Pricing::piecePrices ? Pricing::costAndProfit : Pricing::piecePrices;
}

BidSetup withOtherWay(BidSetup setup, Task task) {
    if (std::erase(setup.otherWay, OtherWay{task}) == 0)
        setup.otherWay.push_back({task});
    return setup;
}

Result<void> checkScenario(const Scenario& scenario) {
    if (auto profit = checkProfit(scenario.profitKind, scenario.profit); !profit)
        return profit;
    if (auto overhead = checkOverhead(scenario.overhead); !overhead)
        return overhead;
    return Checks()
        .require(!isBlank(scenario.name), "A scenario needs a name.")
        .between(scenario.wages, 10, 1000, "Wages")
        .between(scenario.material, 0, 1000, "Material")
        .between(scenario.minutes, 10, 1000, "Minutes")
        .require(scenario.taskMinutes >= MinutesPerUnit()
                && scenario.taskMinutes <= MinutesPerUnit::whole(10'000),
            "Minutes for one are between 0 and 10000.")
        .result();
}

} // namespace miterbook
