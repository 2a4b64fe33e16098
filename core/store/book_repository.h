// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "book/price_book.h"
#include "store/connection.h"

namespace miterbook {

/// Everything that the shop knows.
Result<PriceBook> loadPrices(Connection& connection);

} // namespace miterbook
