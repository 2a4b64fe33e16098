// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/hours.h"
#include "bill/extra.h"
#include "book/price_book.h"

#include <vector>

namespace miterbook {

struct Plan;

/// One line of an extra's price: so much of a task, and what its material costs.
struct ExtraLine {
    Id<ExtraLine> id;
    Id<Plan> plan; ///< the house's own
    Id<Extra> extra;
    Task task = Task::other;
    Quantity quantity; ///< in unitOf(task): hours for other work
    Money material;

    bool operator==(const ExtraLine&) const = default;
};

template <>
struct Describe<ExtraLine> {
    static constexpr std::string_view table = "extra_line";
    static constexpr std::string_view noun = "line of an extra";
    static constexpr void allFields(auto&& take) {
        take(field("id", &ExtraLine::id), field("plan", &ExtraLine::plan),
            field("extra", &ExtraLine::extra), field("task", &ExtraLine::task),
            field("quantity", &ExtraLine::quantity), field("material", &ExtraLine::material));
    }
};

/// What an extra costs and should bring by the book's rates.
struct ExtraPrice {
    Hours hours;
    Money labour;
    Money material;
    Money overhead;
    Money price;

    Money cost() const { return labour + material + overhead; }
    bool operator==(const ExtraPrice&) const = default;
};

/// Prices the lines as a bid does: hours at the rates and the crew rate, overhead, and profit by
/// the shop's terms. Hours of other work and punch are the quantity itself. Error: a sentence when
/// a task has no rate, or the terms' margin is 100 % or more.
Result<ExtraPrice> priceExtra(const std::vector<ExtraLine>& lines, const PriceBook& prices);

} // namespace miterbook
