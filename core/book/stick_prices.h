// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "book/price_book.h"

#include <vector>

namespace miterbook {

/// What a stick costs by a supplier's quote, rounded once to the cent.
Money priceOfStick(Length length, UnitPrice quoted, PricePer per);

/// What a stick costs on a day: the supplier's price that began last, else the stick's own. No day:
/// all that is known has begun.
Money stickPriceOn(const PriceBook& prices, const Stick& stick, Date day);

/// The dated prices of a stick, the earliest first; its own price held before them.
std::vector<StickPrice> priceHistory(const PriceBook& prices, Id<Stick> stick);

/// The same prices as they are in force on the book's day, without history: what a "what if" of
/// prices begins with.
PriceBook pricesInForce(const PriceBook& prices);

} // namespace miterbook
