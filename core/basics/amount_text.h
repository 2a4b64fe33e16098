// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/hours.h"
#include "basics/length_text.h"
#include "basics/money.h"
#include "basics/quantity.h"

#include <string>

namespace miterbook {

// Running and square feet as the shop says them. Inside, trim is counted in feet and square feet
// and priced by them; a shop that writes millimetres reads and types running and square metres.
// "Said" is what the user sees, "counted" what the book holds; every other unit is the same both
// ways.

/// "LF" or "m", "SF" or "m²"; else the unit's word.
std::string unitText(Unit unit, LengthUnit written);

Quantity amountSaid(Quantity counted, Unit unit, LengthUnit written);
Quantity amountCounted(Quantity said, Unit unit, LengthUnit written);

/// `12.5 LF`, `3.81 m`, `2 each`.
std::string amountText(Quantity counted, Unit unit, LengthUnit written, int decimals = 2);

/// A price for one foot as one for a metre, to the tenth of a cent (half a cent by the area): what
/// is typed so is shown again as it was typed.
UnitPrice priceSaid(UnitPrice counted, Unit unit, LengthUnit written);
UnitPrice priceCounted(UnitPrice said, Unit unit, LengthUnit written);

/// Minutes for one, likewise: to 0.05 by the metre, 0.5 by the square metre.
MinutesPerUnit minutesSaid(MinutesPerUnit counted, Unit unit, LengthUnit written);
MinutesPerUnit minutesCounted(MinutesPerUnit said, Unit unit, LengthUnit written);

/// What running lengths are counted in: a foot, or a metre.
constexpr Length runOne(LengthUnit written) {
    return written == LengthUnit::millimetres ? Length::millimetres(1000) : Length::feet(1);
}

/// Running feet or metres of a length: `18.3`.
std::string formatRun(Length length, LengthUnit written, int decimals = 1);
/// "ft" or "m": what stands behind a run.
std::string_view runUnit(LengthUnit written);
/// `18.3 ft`, `5.6 m`.
std::string formatRunWithUnit(Length length, LengthUnit written, int decimals = 1);
/// The same as a number: thousandths of a foot or metre.
Quantity runSaid(Length length, LengthUnit written);

/// A floor's whole square feet as it is said, and back; `2400 sq ft`, `223 m²`.
int floorSaid(int squareFeet, LengthUnit written);
int floorCounted(int said, LengthUnit written);
std::string floorText(int squareFeet, LengthUnit written);
/// What a square foot of floor costs as it is said, and of what: "square foot", "square metre".
Money floorPriceSaid(Money aSquareFoot, LengthUnit written);
std::string_view floorUnitName(LengthUnit written);

/// A stick as the trade says it: `14 ft`, or its length with a unit where it is no whole foot;
/// `4200 mm` where the shop writes so.
std::string stickText(Length length, LengthUnit written);

} // namespace miterbook
