// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>

namespace miterbook {

/// How the work that is left will go: as the work so far has gone, or as it was bid.
enum class Forecast { asSoFar, asBid };

/// Cost control by earned value. What is done is worth its share of the budget, whatever it took.
/// Works for money and, minute for cent, for hours.
/// Source: What's in Earned Value Management, part IV; R package PRA, documentation of `evm`.
struct EarnedValue {
    double budget = 0; ///< BAC, budget at completion
    double earned = 0; ///< EV, budget x share done
    double spent = 0;  ///< AC, actual cost

    /// CPI = EV / AC: what each dollar spent has brought. Nothing before anything was spent.
    std::optional<double> index() const;
    /// EAC: BAC / CPI as so far, AC + (BAC - EV) as bid. Nothing as so far before anything is
    /// earned.
    std::optional<double> atCompletion(Forecast forecast) const;
    /// VAC = BAC - EAC; negative: over the budget.
    std::optional<double> variance(Forecast forecast) const;
};

} // namespace miterbook
