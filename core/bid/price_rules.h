// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/money.h"

#include <string>
#include <string_view>
#include <vector>

namespace miterbook {

/// What the shop's rules make of a price, and why.
struct RuledPrice {
    Money price;
    Money added; ///< never below zero
    std::vector<std::string> notes;

    bool operator==(const RuledPrice&) const = default;
};

/// A price raised to the minimum job, then rounded up to a multiple of `roundTo`; 0 for no such
/// rule. A price of nothing stays nothing.
RuledPrice ruledPrice(Money price, Money minimum, Money roundTo, std::string_view currency = {});

} // namespace miterbook
