// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "bid/bid_setup.h"
#include "job/alternates.h"
#include "papers/paper.h"

namespace miterbook {

// Parts of a bid beside its work and price; each without rows where there is nothing to say.

inline constexpr std::string_view alternatesTitle = "Alternates, not in the price";

/// What each option that is not in the price would add or take off.
PaperTable alternatesTable(const std::vector<Alternate>& alternates, const PriceBook& prices);
/// What stands in the price for what has not been chosen yet.
PaperTable allowancesTable(const BidSetup& setup, const PriceBook& prices);
/// Prices of one for extras, and an hour's.
PaperTable unitPricesTable(const PriceBook& prices);

/// "+$420.00", "-$80.00", "no change".
Cell alternateCell(Money change, std::string_view symbol);

} // namespace miterbook
