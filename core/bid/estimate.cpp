// SPDX-License-Identifier: GPL-3.0-or-later
#include "bid/estimate.h"

#include "bid/estimate_lines.h"
#include "bid/material_cost.h"
#include "bid/profit.h"

#include <algorithm>
#include <map>
#include <set>

namespace miterbook {

namespace {

using Works = std::map<PieceOfWork, WorkTotal>;

void add(Works& works, const WorkMoney& amounts, Money WorkTotal::*member) {
    for (const auto& [work, amount] : amounts) {
        works[work].work = work;
        works[work].*member += amount;
    }
}

Works labourOf(const std::vector<EstimateLine>& lines) {
    Works works;
    for (const EstimateLine& line : lines) {
        WorkTotal& total = works[line.work];
        total.work = line.work;
        total.hours += line.hours;
        total.labour += line.labour;
    }
    return works;
}

WorkWeights costWeights(const Works& works) {
    WorkWeights weights;
    for (const auto& [work, total] : works)
        weights[work] = total.cost().cents();
    return weights;
}

Money costOf(const Works& works) {
    Money cost;
    for (const auto& [work, total] : works)
        cost += total.cost();
    return cost;
}

/// The whole profit is reckoned once, on the whole cost, and shared by cost.
Money wholeProfit(Money cost, const BidSetup& setup) {
    if (setup.profitKind == ProfitKind::markupOnCost)
        return priceAtMarkup(cost, setup.profit) - cost;
    const auto price = priceAtMargin(cost, setup.profit);
    return price ? *price - cost : Money();
}

void addOverheadAndProfit(Works& works, const BidSetup& setup) {
    WorkMoney overhead;
    shareOver(overhead, share(costOf(works), setup.overhead), costWeights(works));
    add(works, overhead, &WorkTotal::overhead);
    WorkMoney profit;
    shareOver(profit, wholeProfit(costOf(works), setup), costWeights(works));
    add(works, profit, &WorkTotal::profit);
    for (auto& [work, total] : works)
        total.price = total.cost() + total.profit;
}

/// Lines without a piece price of the shop's keep their labour's share of the price from cost.
void takePiecePrices(Works& works, const std::vector<EstimateLine>& lines) {
    for (auto& [work, total] : works) {
        Money priced;
        Money labourLeft;
        bool any = false;
        for (const EstimateLine& line : lines) {
            if (line.work != work)
                continue;
            any = any || line.piecePrice;
            if (line.piecePrice)
                priced += *line.piecePrice;
            else
                labourLeft += line.labour;
        }
        if (!any)
            continue;
        const Money rest = total.labour.cents() == 0
            ? Money()
            : Money::cents(roundedQuotient(
                Wide(total.price.cents()) * labourLeft.cents(), total.labour.cents()));
        total.price = priced + rest;
        total.profit = total.price - total.cost();
    }
}

WorkTotal summed(const std::vector<WorkTotal>& works) {
    WorkTotal sum;
    for (const WorkTotal& each : works) {
        sum.hours += each.hours;
        sum.labour += each.labour;
        sum.material += each.material;
        sum.consumables += each.consumables;
        sum.overhead += each.overhead;
        sum.profit += each.profit;
        sum.price += each.price;
    }
    return sum;
}

std::vector<std::string> problemsOf(const Takeoff& takeoff, const std::vector<StickPlan>& sticks,
    const PriceBook& prices, const Estimate& estimate, const BidSetup& setup) {
    std::vector<std::string> problems;
    for (const Remark& remark : takeoff.remarks) {
        if (remark.weight == Remark::Weight::problem)
            problems.push_back(remark.sentence);
    }
    for (const StickPlan& plan : sticks) {
        if (!plan.problem.empty() && !std::ranges::count(problems, plan.problem))
            problems.push_back(plan.problem);
    }
    std::set<Task> without;
    for (const EstimateLine& line : estimate.lines) {
        if (!prices.rate(line.task) && without.insert(line.task).second)
            problems.push_back("The book has no labour rate for \"" + std::string(word(line.task))
                + "\", so it is priced at no hours.");
    }
    if (estimate.crewRate <= Money() && !estimate.lines.empty())
        problems.emplace_back("Nobody is in the crew, so an hour of labour costs nothing.");
    if (setup.profitKind == ProfitKind::marginOnPrice && setup.profit >= Percent::hundred())
        problems.emplace_back("A margin of 100 % or more cannot be reached, so no profit is added.");
    return problems;
}

void addRatios(Estimate& estimate, int floorArea) {
    const WorkTotal& total = estimate.total;
    estimate.markup = markupOf(total.cost(), total.price);
    estimate.margin = marginOf(total.cost(), total.price);
    if (total.hours.minutes() > 0) {
        const Money earned = total.price - total.material - total.consumables;
        estimate.perManHour
            = Money::cents(roundedQuotient(Wide(earned.cents()) * 60, total.hours.minutes()));
    }
    if (floorArea > 0)
        estimate.perSquareFoot = Money::cents(roundedQuotient(total.price.cents(), floorArea));
}

} // namespace

Estimate estimate(const Takeoff& takeoff, const std::vector<StickPlan>& sticks,
    const PriceBook& prices, const BidSetup& setup, int floorArea) {
    Estimate result;
    result.pricing = setup.pricing;
    result.crewRate = prices.crewRate();
    result.lines = estimateLines(takeoff, prices, result.crewRate);
    Works works = labourOf(result.lines);
    add(works, materialCost(takeoff, sticks, prices, setup), &WorkTotal::material);
    add(works, consumablesCost(takeoff, prices), &WorkTotal::consumables);
    addOverheadAndProfit(works, setup);
    if (setup.pricing == Pricing::piecePrices)
        takePiecePrices(works, result.lines);
    for (const auto& [work, total] : works)
        result.works.push_back(total);
    result.total = summed(result.works);
    addRatios(result, floorArea);
    result.problems = problemsOf(takeoff, sticks, prices, result, setup);
    return result;
}

} // namespace miterbook
