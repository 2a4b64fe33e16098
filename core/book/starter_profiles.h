// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "book/price_book.h"

namespace miterbook {

/// Puts the starter mouldings and boards with their stock lengths into a new book. Pattern numbers
/// and sizes are an industry standard given from memory, prices are plausible only: every row is a
/// starter, and says that the supplier has to confirm it.
void addStarterProfiles(PriceBook& book, IdSource& ids);

} // namespace miterbook
