// SPDX-License-Identifier: GPL-3.0-or-later
#include "bid/material_cost.h"

namespace miterbook {

namespace {

WorkWeights lengthsByWork(const StickNeed& need) {
    WorkWeights weights;
    for (const auto& [work, length] : need.byWork)
        weights[work] += length.nm() / 1000; // micrometres: sums stay far from overflow
    return weights;
}

void addSticks(WorkMoney& cost, const Takeoff& takeoff, const std::vector<StickPlan>& sticks,
    const PriceBook& prices, Percent waste) {
    const std::vector<StickNeed> needs = stickNeeds(takeoff);
    for (const StickPlan& plan : sticks) {
        for (const StickNeed& need : needs) {
            if (need.profile != plan.profile)
                continue;
            const Money amount = waste > Percent()
                ? costWithWaste(plan.needed, plan.profile, prices, waste)
                : plan.cost;
            shareOver(cost, amount, lengthsByWork(need));
        }
    }
}

void addParts(WorkMoney& cost, const Takeoff& takeoff, const PriceBook& prices) {
    for (const PartCount& need : takeoff.parts) {
        const Part* part = prices.part(need.use);
        if (part && !part->builderSupplies)
            cost[need.work] += part->price * need.count;
    }
}

void addTax(WorkMoney& cost, Percent rate) {
    WorkWeights weights;
    for (const auto& [work, amount] : cost)
        weights[work] = amount.cents();
    shareOver(cost, share(sum(cost), rate), weights);
}

} // namespace

Money costWithWaste(Length needed, Id<Profile> profile, const PriceBook& prices, Percent waste) {
    Money cheapest;
    bool any = false;
    for (const Stick& stick : prices.stockedSticks(profile)) {
        if (stick.length <= Length())
            continue;
        const Wide amount = Wide(stick.price.cents()) * needed.nm()
            * (Percent::hundred() + waste).basisPoints();
        const Money cost
            = Money::cents(roundedQuotient(amount, Wide(stick.length.nm()) * 10'000));
        cheapest = any ? std::min(cheapest, cost) : cost;
        any = true;
    }
    return cheapest;
}

WorkMoney materialCost(const Takeoff& takeoff, const std::vector<StickPlan>& sticks,
    const PriceBook& prices, const BidSetup& setup) {
    WorkMoney cost;
    addSticks(cost, takeoff, sticks, prices, setup.waste);
    addParts(cost, takeoff, prices);
    for (const BoughtGoods& goods : takeoff.goods)
        cost[goods.work] += goods.cost;
    addTax(cost, prices.terms().materialTax);
    return cost;
}

WorkMoney consumablesCost(const Takeoff& takeoff, const PriceBook& prices) {
    WorkWeights lengths;
    Length feet;
    for (const Piece& piece : takeoff.pieces) {
        const Length run = piece.longPoint * piece.count;
        lengths[piece.work] += run.nm() / 1000;
        feet += run;
    }
    WorkMoney cost;
    for (const auto& [id, row] : prices.of<Consumable>()) {
        const Wide whole = Wide(row.price.cents()) * feet.nm();
        const Wide each = Wide(Length::feet(1).nm()) * std::max(row.feetEach, 1);
        shareOver(cost, Money::cents(roundedQuotient(whole, each)), lengths);
    }
    return cost;
}

} // namespace miterbook
