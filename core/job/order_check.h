// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/price_sheet.h"

#include <optional>
#include <string>
#include <vector>

namespace miterbook {

/// A builder's purchase order held against the price sheet for a house.
struct OrderCheck {
    struct Part {
        std::string name; ///< "Plan price, elevation B", an option
        Money amount;

        bool operator==(const Part&) const = default;
    };
    std::vector<Part> parts; ///< what the lot comes to by the sheet; they add up to `sheet`
    Money sheet;
    Money ordered;
    /// What could explain the difference, the likeliest first; one sentence saying that nothing
    /// does where nothing does; empty where there is no difference.
    std::vector<std::string> explanations;

    Money difference() const { return ordered - sheet; }
    bool operator==(const OrderCheck&) const = default;
};

/// Checks an order's total against the sheet of the house's builder's plan, whose rows must be
/// open. An option left out or ordered besides, up to three of them together, another elevation, a
/// bid that was sent on the house, and its agreed extras are tried. Errors: the sheet lacks the
/// house's elevation or an option.
Result<OrderCheck> checkOrder(
    const Book& book, const PlanPrices& prices, const House& house, Money ordered);

} // namespace miterbook
