// SPDX-License-Identifier: GPL-3.0-or-later
#include "bid/material.h"

#include "bid/stick_supply.h"
#include "packing/solve.h"

#include <algorithm>

namespace miterbook {

namespace {

/// Budget of one profile's thorough plan: some tenths of a second, the same result on any machine.
constexpr std::int64_t thoroughWork = 150'000;

std::string piecesText(std::int64_t count) {
    return count == 1 ? "1 piece" : std::to_string(count) + " pieces";
}

std::int64_t countOf(const std::vector<StickNeed::Lot>& lots) {
    std::int64_t count = 0;
    for (const StickNeed::Lot& lot : lots)
        count += lot.count;
    return count;
}

std::string tooLongSentence(const std::vector<StickNeed::Lot>& tooLong, Length longest,
    const std::string& name, LengthStyle style) {
    const bool one = countOf(tooLong) == 1;
    return name + ": " + piecesText(countOf(tooLong)) + (one ? " of " : " up to ")
        + formatLengthWithUnit(tooLong.front().length, style) + (one ? " is" : " are")
        + " longer than the longest stick (" + formatLengthWithUnit(longest, style) + ").";
}

std::string missingSentence(
    const StickSupply& supply, std::int64_t count, const std::string& name) {
    const std::string why = supply.priced
        ? "The offcuts of " + name + " that are long enough run out"
        : supply.stocked ? "No stick of " + name + " has a price"
                         : "No stick of " + name + " is stocked";
    return why + "; " + piecesText(count) + (count == 1 ? " comes" : " come") + " out of none.";
}

/// Lots in falling order; those over `longest` are taken out and returned.
std::vector<StickNeed::Lot> takeTooLong(std::vector<StickNeed::Lot>& lots, Length longest) {
    std::ranges::stable_sort(lots, std::ranges::greater(), &StickNeed::Lot::length);
    const auto fits = std::ranges::find_if(
        lots, [&](const StickNeed::Lot& lot) { return lot.length <= longest; });
    std::vector<StickNeed::Lot> tooLong(lots.begin(), fits);
    lots.erase(lots.begin(), fits);
    return tooLong;
}

CutPattern cutPattern(const packing::Pattern& pattern, const StickSupply& supply,
    const std::vector<StickNeed::Lot>& lots) {
    const StickSupply::Kind& kind = supply.kinds[pattern.stick];
    CutPattern cut{kind.length, kind.offcut, kind.price, static_cast<int>(pattern.times), {}};
    for (const packing::Share& share : pattern.shares)
        cut.pieces.insert(
            cut.pieces.end(), static_cast<std::size_t>(share.count), lots[share.piece].length);
    std::ranges::sort(cut.pieces, std::ranges::greater());
    return cut;
}

/// Out of the rack first, then long sticks before short, then long pieces before short.
bool cutsBefore(const CutPattern& a, const CutPattern& b) {
    if (a.offcut != b.offcut)
        return a.offcut;
    if (a.stick != b.stick)
        return a.stick > b.stick;
    return a.pieces > b.pieces;
}

packing::Solution solved(
    const packing::Problem& problem, Effort effort, const std::function<bool()>& stop) {
    if (effort == Effort::quick)
        return packing::quickPlan(problem);
    packing::Budget budget(thoroughWork, stop);
    return packing::solve(problem, budget);
}

void takeSolution(StickPlan& plan, const packing::Solution& solution, const StickSupply& supply,
    const std::vector<StickNeed::Lot>& lots) {
    for (const packing::Pattern& pattern : solution.plan.patterns)
        plan.patterns.push_back(cutPattern(pattern, supply, lots));
    std::ranges::stable_sort(plan.patterns, cutsBefore);
    for (const CutPattern& pattern : plan.patterns)
        plan.cost += pattern.price * pattern.times;
    // With offcuts counted the plan can be better by the gap at most, whatever is bought.
    const Money gap = Money::cents(solution.plan.cost - solution.bound);
    plan.bound = solution.bound > 0 ? std::max(plan.cost - gap, Money()) : Money();
    plan.proven = solution.proven;
}

std::int64_t missingCount(const packing::Plan& plan) {
    std::int64_t count = 0;
    for (const packing::Share& share : plan.missing)
        count += share.count;
    return count;
}

} // namespace

StickPlan planSticks(const StickNeed& need, const PriceBook& prices, Effort effort,
    const std::function<bool()>& stop) {
    StickPlan plan;
    plan.profile = need.profile;
    for (const StickNeed::Lot& lot : need.lots)
        plan.needed += lot.length * lot.count;
    std::vector<StickNeed::Lot> lots = need.lots;
    std::erase_if(lots, [](const auto& lot) { return lot.count <= 0 || lot.length <= Length(); });
    const std::string name(prices.profileName(need.profile));
    const StickSupply supply = stickSupply(need.profile, prices);
    std::vector<StickNeed::Lot> tooLong;
    if (supply.priced)
        tooLong = takeTooLong(lots, supply.longest);
    const packing::Solution solution = solved(
        cuttingProblem(lots, need.mitered, supply, prices.practice()), effort, stop);
    if (!solution.ok()) {
        plan.problem = name + " cannot be planned: " + solution.error;
        return plan;
    }
    takeSolution(plan, solution, supply, lots);
    if (!tooLong.empty()) {
        plan.proven = false;
        plan.problem = tooLongSentence(tooLong, supply.longest, name, prices.shop().lengths());
    } else if (!solution.plan.complete()) {
        plan.problem = missingSentence(supply, missingCount(solution.plan), name);
    }
    return plan;
}

std::vector<StickPlan> planAllSticks(const std::vector<StickNeed>& needs, const PriceBook& prices,
    Effort effort, const std::function<bool()>& stop) {
    std::vector<StickPlan> plans;
    plans.reserve(needs.size());
    for (const StickNeed& need : needs)
        plans.push_back(planSticks(need, prices, effort, stop));
    return plans;
}

} // namespace miterbook
