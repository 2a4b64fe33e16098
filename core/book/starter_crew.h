// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "book/price_book.h"

namespace miterbook {

/// Puts an invented crew of two and the usual items of labour burden into a new book.
void addStarterCrew(PriceBook& book, IdSource& ids);

} // namespace miterbook
