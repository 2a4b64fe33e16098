// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/hours.h"
#include "basics/money.h"
#include "basics/percent.h"
#include "basics/quantity.h"
#include "basics/result.h"

#include <string>
#include <string_view>

namespace miterbook {

/// `1,234.50`; negative `-1,234.50`. `symbol` (the book's currency sign) goes before the digits.
std::string formatMoney(Money money, std::string_view symbol = {});
/// Reads `1234.5`, `$1,234.50`, `-12`. Refuses more than two decimals, a comma that is not a
/// thousands mark, and amounts over 100 million, each with a sentence.
Result<Money> parseMoney(std::string_view text);

/// Up to four decimals, at least two: `1.28`, `0.0125`.
std::string formatUnitPrice(UnitPrice price);
Result<UnitPrice> parseUnitPrice(std::string_view text);

/// `12.5` (no sign); parse takes an optional `%`.
std::string formatPercent(Percent percent);
Result<Percent> parsePercent(std::string_view text);

/// Hours with one or more decimals: `7.5` with decimals = 1.
std::string formatHours(Hours hours, int decimals = 1);
/// Reads `7.5`, `7.5 h`, `7:30`, `7h30`, `45 min`, to the nearest minute; up to 10,000 hours.
Result<Hours> parseHours(std::string_view text);

/// Minutes a unit: `1.25`.
std::string formatMinutesPerUnit(MinutesPerUnit minutes);
Result<MinutesPerUnit> parseMinutesPerUnit(std::string_view text);

/// Up to `decimals` places, trailing zeros dropped: `12`, `421.3`.
std::string formatQuantity(Quantity quantity, int decimals = 1);
/// Refuses negatives and anything over a million, with a sentence.
Result<Quantity> parseQuantity(std::string_view text);

/// A whole number from low to high; the sentence names `what`.
Result<int> parseWhole(std::string_view text, std::string_view what, int low, int high);

} // namespace miterbook
