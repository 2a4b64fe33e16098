// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/fields.h"
#include "basics/id.h"
#include "book/terms.h"
#include "plan/plan.h"

#include <string>

namespace miterbook {

/// What a bid for one plan or house does otherwise than the shop's terms.
struct BidSetup {
    Id<BidSetup> id;
    Id<Plan> plan;
    Pricing pricing = Pricing::costAndProfit;
    ProfitKind profitKind = ProfitKind::markupOnCost;
    Percent profit = Percent::whole(20);
    Percent overhead = Percent::whole(10);
    int trips = 2;
    Percent waste;            ///< material by waste percentage instead of the stick plan; 0: stick plan
    std::string scope;        ///< the shop's words at the head of the bid
    std::string inclusions;   ///< lines separated by '\n'
    std::string exclusions;

    bool operator==(const BidSetup&) const = default;
};

template <>
struct Describe<BidSetup> {
    static constexpr std::string_view table = "bid_setup";
    static constexpr std::string_view noun = "bid setup";
    static constexpr void allFields(auto&& take) {
        take(field("id", &BidSetup::id),
        field("plan", &BidSetup::plan),
        field("pricing", &BidSetup::pricing),
        field("profit_kind", &BidSetup::profitKind),
        field("profit", &BidSetup::profit),
        field("overhead", &BidSetup::overhead),
        field("trips", &BidSetup::trips),
        field("waste", &BidSetup::waste),
        field("scope", &BidSetup::scope),
        field("inclusions", &BidSetup::inclusions),
        field("exclusions", &BidSetup::exclusions));
    }
};

/// A setup that says what the terms say.
inline BidSetup setupFrom(const Terms& terms, Id<Plan> plan) {
    BidSetup setup;
    setup.plan = plan;
    setup.pricing = terms.pricing;
    setup.profitKind = terms.profitKind;
    setup.profit = terms.profit;
    setup.overhead = terms.overhead;
    setup.trips = terms.tripsPerHouse;
    setup.inclusions = terms.inclusions;
    setup.exclusions = terms.exclusions;
    return setup;
}

} // namespace miterbook
