// SPDX-License-Identifier: GPL-3.0-or-later
#include "bid/trim_cost.h"

#include "bid/spares.h"
#include "bid/stick_supply.h"

#include <algorithm>
#include <map>

namespace miterbook {

namespace {

std::vector<ProfileCost> runningLengths(const Takeoff& takeoff, const Coverage& coverage) {
    std::map<Id<Profile>, ProfileCost> byProfile;
    for (const Piece& piece : takeoff.pieces) {
        if (!piece.profile || piece.count <= 0 || piece.longPoint <= Length())
            continue;
        ProfileCost& cost = byProfile[piece.profile];
        cost.profile = piece.profile;
        cost.running.at(piece.work, coverage.half(piece.work, piece.source)) += piece.longPoint
            * piece.count;
    }
    std::vector<ProfileCost> costs;
    costs.reserve(byProfile.size());
    for (auto& [profile, cost] : byProfile)
        costs.push_back(std::move(cost));
    return costs;
}

Money stickPlanCost(Id<Profile> profile, const std::vector<StickPlan>& sticks,
    const PriceBook& prices, std::vector<std::string>& problems) {
    const auto plan = std::ranges::find(sticks, profile, &StickPlan::profile);
    if (plan == sticks.end()) {
        problems.push_back("The sticks of " + std::string(prices.profileName(profile))
            + " are not planned; they cost nothing here.");
        return {};
    }
    if (!plan->problem.empty())
        problems.push_back(plan->problem);
    const auto spares = spareSticks(*plan, prices.practice().spareSticks);
    return plan->cost + (spares ? spares->cost() : Money());
}

Money wasteCost(const ProfileCost& profile, Percent waste, const PriceBook& prices,
    std::vector<std::string>& problems) {
    const auto cost = costWithWaste(profile.running.sum(), waste, profile.profile, prices);
    if (!cost)
        problems.push_back("No stocked stick of " + std::string(prices.profileName(profile.profile))
            + " has a price; it costs nothing here.");
    return cost.value_or(Money());
}

} // namespace

std::optional<Money> costWithWaste(
    Length running, Percent waste, Id<Profile> profile, const PriceBook& prices) {
    const StickSupply supply = stickSupply(profile, prices);
    const StickSupply::Kind* cheapest = cheapestByLength(supply);
    if (!cheapest)
        return std::nullopt;
    const Percent withWaste = Percent::hundred() + waste;
    return Money::cents(
        roundedQuotient(Wide(running.nm()) * withWaste.basisPoints() * cheapest->price.cents(),
            Wide(Percent::hundred().basisPoints()) * cheapest->length.nm()));
}

std::vector<ProfileCost> profileCosts(const Takeoff& takeoff, const std::vector<StickPlan>& sticks,
    const PriceBook& prices, Percent waste, const Coverage& coverage,
    std::vector<std::string>& problems) {
    std::vector<ProfileCost> costs = runningLengths(takeoff, coverage);
    for (ProfileCost& profile : costs) {
        profile.cost = waste > Percent() ? wasteCost(profile, waste, prices, problems)
                                         : stickPlanCost(profile.profile, sticks, prices, problems);
        profile.shares = shareOut(profile.cost, profile.running);
    }
    return costs;
}

} // namespace miterbook
