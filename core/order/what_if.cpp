// SPDX-License-Identifier: GPL-3.0-or-later
#include "order/what_if.h"

#include "basics/amount_text.h"
#include "bid/stick_supply.h"
#include "book/stick_prices.h"

#include <algorithm>

namespace miterbook {

namespace {

using Plans = std::vector<StickPlan>;

/// How much dearer every foot is made, step by step, until a plan buys little enough: a share of
/// the mean price of a foot. The last says that length is all that counts.
constexpr Percent surcharges[] = {Percent::whole(2), Percent::whole(5), Percent::whole(12),
    Percent::whole(30), Percent::whole(100), Percent::whole(10'000)};

bool stocked(const Stick& stick, const WhatIf& whatIf) {
    const auto& none = whatIf.outOfStock;
    return stick.stocked && std::ranges::find(none, stick.length) == none.end();
}

/// The plan as it is, when a profile's question stays the same.
const StickPlan* unchanged(
    const StickNeed& need, const PriceBook& before, const PriceBook& after, const OrderNow& now) {
    const auto same = std::ranges::find(now.needs, need);
    const auto at = static_cast<std::size_t>(same - now.needs.begin());
    if (at >= now.plans.size() || before.practice() != after.practice()
        || stickSupply(need.profile, before) != stickSupply(need.profile, after))
        return nullptr;
    return &now.plans[at];
}

Plans planned(const std::vector<StickNeed>& needs, const PriceBook& before, const PriceBook& after,
    const OrderNow& now, const std::function<bool()>& stop) {
    Plans plans;
    for (const StickNeed& need : needs) {
        const StickPlan* same = unchanged(need, before, after, now);
        plans.push_back(same ? *same : planSticks(need, after, Effort::thorough, stop));
    }
    return plans;
}

/// A foot of stick on the average, in cents; 1 at least.
std::int64_t meanFoot(const OrderSums& sums) {
    if (sums.bought < Length::feet(1))
        return 1;
    const Wide cents = Wide(sums.cost.cents()) * Length::feet(1).nm();
    return std::max<std::int64_t>(1, roundedQuotient(cents, sums.bought.nm()));
}

/// Every stick dearer by so much a foot.
PriceBook surcharged(const PriceBook& today, Money perFoot) {
    PriceBook prices = pricesInForce(today);
    const Table<Stick> sticks = prices.of<Stick>();
    for (const auto& [id, held] : sticks) {
        if (held.price <= Money())
            continue;
        Stick stick = held;
        const Wide more = Wide(perFoot.cents()) * stick.length.nm();
        stick.price += Money::cents(roundedQuotient(more, Length::feet(1).nm()));
        prices.of<Stick>().put(stick);
    }
    return prices;
}

/// Plans made at other prices, at the true ones; no cheaper than the bounds of the plans `free` of
/// any wish for less.
void priceTruly(Plans& plans, const PriceBook& prices, const Plans& free) {
    for (std::size_t i = 0; i < plans.size(); ++i) {
        StickPlan& plan = plans[i];
        plan.cost = Money();
        const std::vector<Stick> sticks = prices.stockedSticks(plan.profile);
        for (CutPattern& pattern : plan.patterns) {
            const auto stick = std::ranges::find(sticks, pattern.stick, &Stick::length);
            if (!pattern.offcut && stick != sticks.end())
                pattern.price = stick->price;
            plan.cost += pattern.price * pattern.times;
        }
        plan.bound = free[i].bound;
        plan.proven = free[i].proven && plan.cost == plan.bound;
    }
}

Error notSoMuchLess(Length now, Length less, Length least, LengthUnit written) {
    const auto said = [written](Length length) {
        return written == LengthUnit::millimetres
            ? formatRunWithUnit(length, written)
            : formatLengthWithUnit(length, {LengthUnit::feetInches, 16});
    };
    return badInput("No plan was found that buys " + said(less) + " less"
        + (least < now ? "; " + said(now - least) + " less is the most." : "."));
}

/// So much less than now, at what it costs.
Result<Plans> withLess(const std::vector<StickNeed>& needs, const PriceBook& prices, Length now,
    Length less, const Plans& free, const std::function<bool()>& stop) {
    Length least = orderSums(free).bought;
    const std::int64_t foot = meanFoot(orderSums(free));
    for (const Percent share : surcharges) {
        const Money more = Money::cents(
            std::max<std::int64_t>(1, roundedQuotient(Wide(foot) * share.basisPoints(), 10'000)));
        Plans plans = planAllSticks(needs, surcharged(prices, more), Effort::thorough, stop);
        priceTruly(plans, prices, free);
        const Length bought = orderSums(plans).bought;
        if (bought <= now - less)
            return plans;
        least = std::min(least, bought);
        if (stop && stop())
            break;
    }
    return notSoMuchLess(now, less, least, prices.shop().unit);
}

} // namespace

OrderSums orderSums(const std::vector<StickPlan>& plans) {
    OrderSums sums;
    sums.proven = true;
    for (const StickPlan& plan : plans) {
        sums.cost += plan.cost;
        sums.bound += plan.bound;
        sums.proven = sums.proven && plan.proven;
        for (const CutPattern& pattern : plan.patterns) {
            ++sums.patterns;
            (pattern.offcut ? sums.fromRack : sums.sticks) += pattern.times;
            if (!pattern.offcut)
                sums.bought += pattern.stick * pattern.times;
        }
    }
    return sums;
}

PriceBook pricesIf(const PriceBook& today, const WhatIf& whatIf) {
    PriceBook prices = pricesInForce(today);
    if (whatIf.kerf) {
        Practice practice = prices.practice();
        practice.kerf = *whatIf.kerf;
        prices.of<Practice>().put(practice);
    }
    const Table<Stick> sticks = prices.of<Stick>();
    for (const auto& [id, held] : sticks) {
        Stick stick = held;
        stick.stocked = stocked(stick, whatIf);
        if (whatIf.offer && stick.profile == whatIf.offer->profile
            && stick.length == whatIf.offer->length)
            stick.price = whatIf.offer->price;
        prices.of<Stick>().put(stick);
    }
    return prices;
}

Result<std::vector<StickPlan>> plansIf(const std::vector<StickNeed>& needs, const PriceBook& prices,
    const WhatIf& whatIf, const OrderNow& now, const std::function<bool()>& stop) {
    const PriceBook changed = pricesIf(prices, whatIf);
    Plans plans = planned(needs, prices, changed, now, stop);
    const Length bought = orderSums(now.plans).bought;
    if (whatIf.less <= Length() || orderSums(plans).bought <= bought - whatIf.less)
        return plans;
    return withLess(needs, changed, bought, whatIf.less, plans, stop);
}

} // namespace miterbook
