// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "bid/stick_memory.h"
#include "job/figures.h"

#include <optional>
#include <string>
#include <vector>

namespace miterbook {

/// What one plan comes to, as drawn and under each elevation, and what each option adds to that.
/// Every number is a whole estimate, or the exact difference of two: price(elevation + option) -
/// price(elevation), never a share of one.
struct PlanPrices {
    struct Column {
        Id<Variant> elevation; ///< none: the plan as drawn
        std::string name;
        Money price;

        bool operator==(const Column&) const = default;
    };
    struct Option {
        Id<Variant> option;
        std::string name;
        std::vector<Money> changes; ///< one for each column; below zero for a deduction

        bool operator==(const Option&) const = default;
    };
    Id<Plan> plan;
    std::string name;
    int floorArea = 0; ///< square feet; 0 when not said
    std::vector<Column> columns;
    std::vector<Option> options;
    std::vector<std::string> problems; ///< what keeps a price from being right, each once

    bool operator==(const PlanPrices&) const = default;
};

/// The prices of an opened builder's plan. `planFor` as in figuresFor().
PlanPrices planPrices(
    const Book& book, Id<Plan> plan, const std::function<StickPlan(const StickNeed&)>& planFor);

/// The prices of every plan of a set, by name; plans that are not opened are left out.
/// Sticks are cut beside one another, on each processor; what comes out does not depend on that.
/// `stop` is asked on any of their threads and ends early with nothing; `step` is told after each
/// stick plan how many of how many, by one thread at a time.
std::vector<PlanPrices> priceSheet(const Book& book, Id<PlanSet> set, StickMemory& memory,
    Effort effort, const std::function<bool()>& stop = {},
    const std::function<void(int, int)>& step = {});

/// Plans that a price sheet's memory holds of one profile: some hundred variations.
inline constexpr std::size_t sheetMemory = 2000;

/// The builder's own plans of a set (not the houses' copies), by name.
std::vector<Id<Plan>> plansOf(const Book& book, Id<PlanSet> set);

/// What a lot comes to by the sheet: the plan's price under the elevation, and the change of each
/// option in the same column. Nothing where the sheet has no such elevation or option.
std::optional<Money> lotPrice(const PlanPrices& prices, const Selection& selection);

} // namespace miterbook
