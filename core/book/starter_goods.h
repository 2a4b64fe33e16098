// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "book/price_book.h"

namespace miterbook {

/// Puts the goods by the each, the consumables and the piece prices of a starter into a new book.
/// Every price is plausible only and marked as a starter.
void addStarterGoods(PriceBook& book, IdSource& ids);

} // namespace miterbook
