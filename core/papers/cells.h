// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/hours.h"
#include "basics/length_text.h"
#include "basics/money.h"
#include "basics/quantity.h"
#include "papers/paper.h"

namespace miterbook {

// Cells that say the same number twice: as people read it and as a plain decimal.

Cell countCell(std::int64_t count);
/// `$1,234.50` and 1234.50.
Cell moneyCell(Money money, std::string_view symbol);
/// One decimal printed; exact to the thousandth.
Cell quantityCell(Quantity quantity);
/// `7.5`, `7.25`; exact in hours.
Cell hoursCell(Hours hours);
/// A length in the shop's style without its unit; exact in the column's unit: inches, or
/// millimetres.
Cell lengthCell(Length length, LengthStyle style);
/// A stick's length as yards say it: whole feet, or feet and inches; exact in feet to the
/// thousandth. Millimetres where the shop writes those.
Cell stickCell(Length length, LengthStyle style);

/// A column's title with the unit of its cells: "Long point, in".
std::string lengthTitle(std::string_view title, LengthStyle style);
std::string stickTitle(LengthStyle style);

} // namespace miterbook
