// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "book/price_book.h"

namespace miterbook {

/// Puts a labour rate for every task and a factor for every condition into a new book: common
/// practice, the range of the field quoted in `source`, each one a starter for the shop to replace.
void addStarterLabour(PriceBook& book, IdSource& ids);

} // namespace miterbook
