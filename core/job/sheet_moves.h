// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/edit.h"
#include "job/price_sheet.h"

#include <optional>
#include <string>
#include <vector>

namespace miterbook {

/// One price of a sheet, and what it was on the sheet before.
struct SheetMove {
    std::string plan;
    std::string line;            ///< "Plan price", or an option
    std::string elevation;       ///< "As drawn", "B"
    std::optional<Money> before; ///< nothing: the sheet before had no such price
    std::optional<Money> after;  ///< nothing: it is gone

    bool moved() const { return before != after; }
    Money change() const { return after.value_or(Money()) - before.value_or(Money()); }
    bool operator==(const SheetMove&) const = default;
};

/// Every price of a sheet against the sheet before, in the sheet's order; prices that are gone
/// last.
std::vector<SheetMove> sheetMoves(
    const std::vector<PlanPrices>& before, const std::vector<PlanPrices>& after);

/// What changes of the book can move a set's prices, each thing once in words: "labour rate \"base,
/// one piece\"", "stick of Flat casing, 14 ft", "plan \"Aspen\"". `said` are those found already.
void gatherReasons(const Book& book, Id<PlanSet> set, const std::vector<Change>& changes,
    std::vector<std::string>& said);

} // namespace miterbook
