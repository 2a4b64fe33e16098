// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/date.h"
#include "basics/fields.h"
#include "basics/id.h"
#include "basics/result.h"
#include "book/piece_of_work.h"
#include "book/task.h"
#include "book/terms.h"
#include "plan/plan.h"

#include <string>
#include <vector>

namespace miterbook {

/// A task that is priced the other way than the bid as a whole.
struct OtherWay {
    Task task = Task::other;

    bool operator==(const OtherWay&) const = default;
};

template <>
struct Describe<OtherWay> {
    static constexpr std::string_view table = "";
    static constexpr std::string_view noun = "task priced the other way";
    static constexpr void allFields(auto&& take) { take(field("task", &OtherWay::task)); }
};

/// An amount in the price for what has not been chosen yet: what is chosen is billed against it.
struct Allowance {
    std::string what;
    PieceOfWork work = PieceOfWork::doors;
    Money amount;

    bool operator==(const Allowance&) const = default;
};

template <>
struct Describe<Allowance> {
    static constexpr std::string_view table = "";
    static constexpr std::string_view noun = "allowance";
    static constexpr void allFields(auto&& take) {
        take(field("what", &Allowance::what), field("work", &Allowance::work),
            field("amount", &Allowance::amount));
    }
};

/// What a bid for one plan or house does otherwise than the shop's terms.
struct BidSetup {
    Id<BidSetup> id;
    Id<Plan> plan;
    Pricing pricing = Pricing::costAndProfit;
    ProfitKind profitKind = ProfitKind::markupOnCost;
    Percent profit = Percent::whole(20);
    Percent overhead = Percent::whole(10);
    int trips = 2;
    Percent waste;     ///< material by waste percentage instead of the stick plan; 0: stick plan
    std::string scope; ///< the shop's words at the head of the bid
    std::string inclusions; ///< lines separated by '\n'
    std::string exclusions;
    Date date = noDate;       ///< prices in force on this day; none: on the day it is looked at
    Money minimum;            ///< the price is not less; 0: no minimum job
    Money roundTo;            ///< the price is rounded up to a multiple; 0: to the cent
    bool offerOptions = true; ///< the plan's other options stand on the bid as alternates
    bool quoteUnits = false;  ///< unit prices for extras and the hourly rate stand on the bid
    bool onePage = false;     ///< the bid is a summary, without materials and counts
    std::vector<OtherWay> otherWay;
    std::vector<Allowance> allowances;
    Percent contingency; ///< of labour, material and consumables, for what nobody foresees
    Money delivery;      ///< of the material in all, not taxed; nothing without material

    bool operator==(const BidSetup&) const = default;
};

template <>
struct Describe<BidSetup> {
    static constexpr std::string_view table = "bid_setup";
    static constexpr std::string_view noun = "bid setup";
    static constexpr void allFields(auto&& take) {
        take(field("id", &BidSetup::id), field("plan", &BidSetup::plan),
            field("pricing", &BidSetup::pricing), field("profit_kind", &BidSetup::profitKind),
            field("profit", &BidSetup::profit), field("overhead", &BidSetup::overhead),
            field("trips", &BidSetup::trips), field("waste", &BidSetup::waste),
            field("scope", &BidSetup::scope), field("inclusions", &BidSetup::inclusions),
            field("exclusions", &BidSetup::exclusions), field("date", &BidSetup::date),
            field("minimum", &BidSetup::minimum), field("round_to", &BidSetup::roundTo),
            field("offer_options", &BidSetup::offerOptions),
            field("quote_units", &BidSetup::quoteUnits), field("one_page", &BidSetup::onePage),
            field("other_way", &BidSetup::otherWay), field("allowances", &BidSetup::allowances),
            field("contingency", &BidSetup::contingency), field("delivery", &BidSetup::delivery));
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
    setup.minimum = terms.minimumJob;
    setup.roundTo = terms.roundTo;
    setup.quoteUnits = terms.quoteUnits;
    setup.contingency = terms.contingency;
    setup.delivery = terms.delivery;
    return setup;
}

/// How a task is priced where it has a piece price.
Pricing wayOf(const BidSetup& setup, Task task);

/// The setup with a task priced the other way than it is.
BidSetup withOtherWay(BidSetup setup, Task task);

/// Whether a setup makes sense by itself.
Result<void> checkBidSetup(const BidSetup& setup);

} // namespace miterbook
