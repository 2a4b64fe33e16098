// SPDX-License-Identifier: GPL-3.0-or-later
#include "hours/earned_value.h"

namespace miterbook {

std::optional<double> EarnedValue::index() const {
    if (spent <= 0)
        return std::nullopt;
    return earned / spent;
}

std::optional<double> EarnedValue::atCompletion(Forecast forecast) const {
    if (forecast == Forecast::asBid)
        return spent + (budget - earned);
    if (earned <= 0)
        return std::nullopt;
    return budget * spent / earned;
}

std::optional<double> EarnedValue::variance(Forecast forecast) const {
    const auto total = atCompletion(forecast);
    if (!total)
        return std::nullopt;
    return budget - *total;
}

} // namespace miterbook
