// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "bid/material.h"

#include <optional>

namespace miterbook {

/// What could be otherwise at the yard or at the saw. With nothing set it is as it is.
struct WhatIf {
    /// One length of one profile at another price.
    struct Offer {
        Id<Profile> profile;
        Length length;
        Money price;

        bool operator==(const Offer&) const = default;
    };
    std::optional<Length> kerf;
    std::vector<Length> outOfStock; ///< lengths that the yard has none of today, in any profile
    std::optional<Offer> offer;
    Length less; ///< so much less is to be bought than now

    bool nothing() const { return *this == WhatIf(); }
    bool operator==(const WhatIf&) const = default;
};

/// The sticks of an order in a few numbers.
struct OrderSums {
    Money cost;
    Money bound; ///< no order can cost less
    bool proven = false;
    Length bought;  ///< running length of all sticks bought
    int sticks = 0; ///< bought
    int fromRack = 0;
    int patterns = 0; ///< different ways of cutting a stick

    bool operator==(const OrderSums&) const = default;
};

OrderSums orderSums(const std::vector<StickPlan>& plans);

/// The book with kerf, stocked lengths and the one price as `whatIf` says.
PriceBook pricesIf(const PriceBook& today, const WhatIf& whatIf);

/// What is needed and how it is planned as it is, plans in the needs' order.
struct OrderNow {
    std::vector<StickNeed> needs;
    std::vector<StickPlan> plans;
};

/// The stick plans if it were so, for `needs` as they would be then (a run is spliced by the sticks
/// there are). A profile for which nothing changes keeps its plan. Errors: one sentence when no
/// plan was found that buys so much less. `stop` as planSticks.
Result<std::vector<StickPlan>> plansIf(const std::vector<StickNeed>& needs, const PriceBook& prices,
    const WhatIf& whatIf, const OrderNow& now, const std::function<bool()>& stop = {});

} // namespace miterbook
