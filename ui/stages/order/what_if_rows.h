// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "figures/figure_model.h"
#include "job/figures.h"
#include "order/what_if.h"

namespace miterbook {

/// The plans as it is and as it would be, side by side: each profile's cost, then the sums.
std::vector<FigureRow> whatIfRows(
    const std::vector<StickPlan>& now, const std::vector<StickPlan>& then, const PriceBook& prices);

/// "The sticks would come to 812.40 instead of 830.10: 17.70 less." Where fewer lengths to choose
/// from cost less, it says why: the pieces are others then.
QString whatIfSentence(const WhatIf& whatIf, const std::vector<StickPlan>& now,
    const std::vector<StickPlan>& then, const PriceBook& prices);

} // namespace miterbook
