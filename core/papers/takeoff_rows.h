// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/amount_text.h"
#include "takeoff/totals.h"

#include <string>
#include <variant>
#include <vector>

namespace miterbook {

/// One number of a takeoff: how much of a profile, task or part one place takes.
struct TakeoffRow {
    using Item = std::variant<Id<Profile>, Task, PartUse>;

    PieceOfWork work = PieceOfWork::doors;
    Item item;
    Quantity amount;  ///< of a profile, in the task's unit, or how many parts; as it is said
    int pieces = 0;   ///< of a profile
    std::string from; ///< "W1 17.2, W2 17.2": the rows of the plan it comes from
};

/// The numbers of one place, by piece of work, then profiles, tasks and parts, in feet or metres as
/// lengths are written. They are rounded to the thousandth for each source, so that places add up
/// to the whole.
std::vector<TakeoffRow> takeoffRows(const Totals& totals, LengthUnit written);

/// The sums over places, in the same order; nothing is said of where they come from.
std::vector<TakeoffRow> summedRows(const std::vector<PlaceTotals>& places, LengthUnit written);

/// A profile's name or a task's; goods are told from the task of fitting them.
std::string itemName(const TakeoffRow::Item& item, const PriceBook& prices);
Unit itemUnit(const TakeoffRow::Item& item);

} // namespace miterbook
