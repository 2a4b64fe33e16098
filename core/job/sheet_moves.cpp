// SPDX-License-Identifier: GPL-3.0-or-later
#include "job/sheet_moves.h"

#include "basics/length_text.h"
#include "basics/one_of.h"
#include "job/row_title.h"

#include <algorithm>
#include <map>
#include <tuple>

namespace miterbook {

namespace {

/// Plan, option (none: the plan's own price) and elevation.
using PriceKey = std::tuple<Id<Plan>, Id<Variant>, Id<Variant>>;

struct NamedPrice {
    PriceKey key;
    SheetMove names;
    Money price;
};

std::vector<NamedPrice> pricesOf(const std::vector<PlanPrices>& sheet) {
    std::vector<NamedPrice> prices;
    for (const PlanPrices& plan : sheet) {
        for (const PlanPrices::Column& column : plan.columns) {
            prices.push_back({{plan.plan, {}, column.elevation},
                {plan.name, "Plan price", column.name, {}, {}}, column.price});
        }
        for (const PlanPrices::Option& option : plan.options) {
            for (std::size_t i = 0; i < plan.columns.size(); ++i) {
                prices.push_back({{plan.plan, option.option, plan.columns[i].elevation},
                    {plan.name, option.name, plan.columns[i].name, {}, {}}, option.changes[i]});
            }
        }
    }
    return prices;
}

std::string stickTitle(const Book& book, Id<Stick> id, const Stick* given) {
    const Stick* stick = given ? given : book.prices.of<Stick>().find(id);
    if (!stick)
        return "a stick";
    return "stick of " + std::string(book.prices.profileName(stick->profile)) + ", "
        + formatLengthWithUnit(stick->length, book.prices.shop().lengths());
}

template <class Row>
std::string reasonOf(const Book& book, Id<PlanSet> set, const Row& row) {
    if constexpr (std::is_same_v<Row, Stick>) {
        return stickTitle(book, row.id, &row);
    } else if constexpr (std::is_same_v<Row, StickPrice>) {
        return stickTitle(book, row.stick, nullptr);
    } else if constexpr (isOneOf<Row, Builder, HeaderName, Logo>) {
        return {};
    } else if constexpr (PriceTables::holds<Row>) {
        return isSettings<Row> ? std::string(Describe<Row>::noun) : titleOf(row);
    } else if constexpr (PlanRows::holds<
                             Row> || std::is_same_v<Row, Plan> || std::is_same_v<Row, BidSetup>) {
        const Plan* plan = book.plan(planOf(row));
        return plan && plan->set == set && !plan->house ? titleOf(*plan) : std::string();
    } else {
        return {};
    }
}

} // namespace

std::vector<SheetMove> sheetMoves(
    const std::vector<PlanPrices>& before, const std::vector<PlanPrices>& after) {
    std::map<PriceKey, NamedPrice> old;
    for (NamedPrice& each : pricesOf(before))
        old.insert_or_assign(each.key, std::move(each));
    std::vector<SheetMove> moves;
    for (NamedPrice& each : pricesOf(after)) {
        const auto held = old.find(each.key);
        each.names.after = each.price;
        if (held != old.end()) {
            each.names.before = held->second.price;
            old.erase(held);
        }
        moves.push_back(std::move(each.names));
    }
    for (auto& [key, gone] : old) {
        gone.names.before = gone.price;
        moves.push_back(std::move(gone.names));
    }
    return moves;
}

void gatherReasons(const Book& book, Id<PlanSet> set, const std::vector<Change>& changes,
    std::vector<std::string>& said) {
    for (const Change& change : changes) {
        std::string reason = visitRow(
            change.row(), [&](const auto& row) { return reasonOf(book, set, row); });
        if (!reason.empty() && std::ranges::find(said, reason) == said.end())
            said.push_back(std::move(reason));
    }
}

} // namespace miterbook
