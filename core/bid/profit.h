// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/money.h"
#include "basics/result.h"

namespace miterbook {

/// Price of a cost at a markup on cost: C (1 + m).
Money priceAtMarkup(Money cost, Percent markup);

/// Price of a cost at a margin on price: C / (1 - g). Error for a margin of 100 % or more.
Result<Money> priceAtMargin(Money cost, Percent margin);

/// The markup that gives the same price as a margin: g / (1 - g). Error for 100 % or more.
Result<Percent> markupFor(Percent margin);

/// Profit as a share of cost and of price; zero where there is nothing to divide by.
Percent markupOf(Money cost, Money price);
Percent marginOf(Money cost, Money price);

} // namespace miterbook
