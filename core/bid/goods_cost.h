// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "bid/coverage.h"
#include "bid/per_work.h"

#include <string>
#include <vector>

namespace miterbook {

/// What parts and goods bought outright cost, before tax. Parts that the builder supplies cost
/// nothing. A part that the book has no price for is added to `problems`.
PerWork<Money> goodsCosts(const Takeoff& takeoff, const PriceBook& prices, const Coverage& coverage,
    std::vector<std::string>& problems);

/// What the book's consumables cost for so many running feet of trim: feet / feet each x price for
/// each consumable, rounded once, shared over the pieces of work by running feet.
PerWork<Money> consumableCosts(const PerWork<Length>& running, const PriceBook& prices);

} // namespace miterbook
