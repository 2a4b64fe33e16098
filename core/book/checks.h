// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/result.h"
#include "book/price_book.h"

namespace miterbook {

// Whether one row of the book makes sense as typed; the Error is one sentence for the user. Rows
// are looked at together with the book where they must not repeat another row.

Result<void> check(const Shop& shop, const PriceBook& book);
Result<void> check(const Practice& practice, const PriceBook& book);
Result<void> check(const Terms& terms, const PriceBook& book);
Result<void> check(const Builder& builder, const PriceBook& book);
Result<void> check(const Profile& profile, const PriceBook& book);
Result<void> check(const Stick& stick, const PriceBook& book);
Result<void> check(const StickPrice& price, const PriceBook& book);
Result<void> check(const Offcut& offcut, const PriceBook& book);
Result<void> check(const Part& part, const PriceBook& book);
Result<void> check(const Consumable& consumable, const PriceBook& book);
Result<void> check(const LabourRate& rate, const PriceBook& book);
Result<void> check(const Factor& factor, const PriceBook& book);
Result<void> check(const PiecePrice& price, const PriceBook& book);
Result<void> check(const CrewMember& member, const PriceBook& book);
Result<void> check(const Burden& burden, const PriceBook& book);
Result<void> check(const HeaderName& name, const PriceBook& book);
/// A PNG or JPEG that is what its sum says.
Result<void> check(const Logo& logo, const PriceBook& book);

/// A margin on price from 0 % to under 100 %, or a markup on cost from 0 % to 1,000 %.
Result<void> checkProfit(ProfitKind kind, Percent profit);
/// A minimum job and what prices are rounded up to: neither below zero.
Result<void> checkPriceRules(Money minimum, Money roundTo);
/// Overhead as a percentage of cost: 0 to 200 %.
Result<void> checkOverhead(Percent overhead);
Result<void> checkReserves(Percent contingency, Money delivery);

} // namespace miterbook
