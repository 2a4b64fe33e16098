// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "book/price_book.h"

#include <string>

class QWidget;

namespace miterbook {

class Desk;

/// Every stick of the book with its price in force, as a price list in CSV that can be brought in
/// again: profile, length, price, per.
std::string priceListCsv(const PriceBook& prices);

/// Asks where to, and saves the price list there.
void savePriceList(Desk& desk, QWidget* parent);

} // namespace miterbook
