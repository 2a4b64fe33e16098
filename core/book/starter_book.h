// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "book/price_book.h"

namespace miterbook {

/// The book a new shop begins with: profiles, sticks, labour rates, factors, burden and terms from
/// common practice, every value marked as a starter for the shop to check. Ids come from `ids`.
PriceBook starterBook(IdSource& ids);

} // namespace miterbook
