// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/money.h"

#include <cstdint>
#include <vector>

namespace miterbook {

/// Splits an amount in proportion to weights, to the cent: the parts add up to the amount. Largest
/// remainder, ties to the earlier. All weights zero: everything to the first. Weights not negative;
/// no weights: no parts.
std::vector<Money> shareOut(Money amount, const std::vector<std::int64_t>& weights);

} // namespace miterbook
