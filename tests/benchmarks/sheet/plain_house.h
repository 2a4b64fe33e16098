// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "book/price_book.h"
#include "plan/whole_plan.h"

namespace miterbook {

/// A plan that a spreadsheet can reckon too: picture frame windows, doors cased both sides and
/// rectangular rooms with base and shoe, no two alike; prices of the starter book.
struct PlainHouse {
    PriceBook prices;
    WholePlan whole;
};

/// So many windows, so many doors (a third as many rooms as both together).
PlainHouse plainHouse(int windows, int doors);

} // namespace miterbook
