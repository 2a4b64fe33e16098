// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/fields.h"
#include "basics/hours.h"
#include "basics/id.h"
#include "basics/money.h"
#include "basics/percent.h"
#include "basics/words.h"

#include <string>

namespace miterbook {

/// Profit as a share of cost, or as a share of price. The two are never the same number.
enum class ProfitKind { markupOnCost, marginOnPrice };

template <>
struct Words<ProfitKind> {
    static constexpr std::array list{
        Word{ProfitKind::markupOnCost, "markup on cost"},
        Word{ProfitKind::marginOnPrice, "margin on price"},
    };
};

/// How a bid is priced.
enum class Pricing { costAndProfit, piecePrices };

template <>
struct Words<Pricing> {
    static constexpr std::array list{
        Word{Pricing::costAndProfit, "cost and profit"},
        Word{Pricing::piecePrices, "piece prices"},
    };
};

/// The money side of the shop's bids. One row, id 1.
struct Terms {
    Id<Terms> id;
    Pricing pricing = Pricing::costAndProfit;
    ProfitKind profitKind = ProfitKind::markupOnCost;
    Percent profit = Percent::whole(20);
    Percent overhead = Percent::whole(10); ///< of labour and material cost
    Percent materialTax;                   ///< sales tax the shop pays on material
    int hoursPerYear = 2000;               ///< worked by one person; spreads yearly burden
    int tripsPerHouse = 2;
    int validDays = 30;       ///< a bid stands this long
    std::string paymentTerms; ///< the shop's own wording
    std::string inclusions;   ///< lines separated by '\n'
    std::string exclusions;   ///< lines separated by '\n'
    Money minimumJob;         ///< no bid is less; 0: no minimum
    Money roundTo;            ///< prices are rounded up to a multiple; 0: to the cent
    Money hourlyRate;         ///< quoted for extras by the hour; 0: none is quoted
    bool quoteUnits = false;  ///< bids quote unit prices for extras and the hourly rate
    Percent contingency;      ///< of labour, material and consumables, for what nobody foresees
    Money delivery;           ///< what a house's deliveries cost in all

    bool operator==(const Terms&) const = default;
};

template <>
struct Describe<Terms> {
    static constexpr std::string_view table = "terms";
    static constexpr std::string_view noun = "terms";
    static constexpr void allFields(auto&& take) {
        take(field("id", &Terms::id), field("pricing", &Terms::pricing),
            field("profit_kind", &Terms::profitKind), field("profit", &Terms::profit),
            field("overhead", &Terms::overhead), field("material_tax", &Terms::materialTax),
            field("hours_per_year", &Terms::hoursPerYear),
            field("trips_per_house", &Terms::tripsPerHouse), field("valid_days", &Terms::validDays),
            field("payment_terms", &Terms::paymentTerms), field("inclusions", &Terms::inclusions),
            field("exclusions", &Terms::exclusions), field("minimum_job", &Terms::minimumJob),
            field("round_to", &Terms::roundTo), field("hourly_rate", &Terms::hourlyRate),
            field("quote_units", &Terms::quoteUnits), field("contingency", &Terms::contingency),
            field("delivery", &Terms::delivery));
    }
};

} // namespace miterbook
