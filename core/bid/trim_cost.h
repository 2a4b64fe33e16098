// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "bid/coverage.h"
#include "bid/estimate.h"
#include "bid/per_work.h"

namespace miterbook {

/// What one profile costs and how that is shared over the pieces of work that use it.
struct ProfileCost {
    Id<Profile> profile;
    PerWork<Length> running; ///< long points of its pieces
    Money cost;              ///< before tax
    PerWork<Money> shares;   ///< of `cost`, by running length
};

/// The cost of every profile that the takeoff uses, in profile order: its stick plan's cost, or
/// with `waste` the running length and so much more at the cheapest stocked price per foot. What
/// keeps a cost from being right is added to `problems`.
std::vector<ProfileCost> profileCosts(const Takeoff& takeoff, const std::vector<StickPlan>& sticks,
    const PriceBook& prices, Percent waste, const Coverage& coverage,
    std::vector<std::string>& problems);

/// Running length x (1 + waste) at the stocked stick that is cheapest by the foot, rounded once;
/// nothing when no stocked stick has a price.
std::optional<Money> costWithWaste(
    Length running, Percent waste, Id<Profile> profile, const PriceBook& prices);

} // namespace miterbook
