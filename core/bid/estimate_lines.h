// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "bid/estimate.h"

namespace miterbook {

/// The takeoff's tasks gathered by piece of work, task and conditions, in that order, priced by the
/// book's rates and factors at a crew rate.
std::vector<EstimateLine> estimateLines(
    const Takeoff& takeoff, const PriceBook& prices, Money crewRate);

/// quantity x minutes x factor, rounded once to the whole minute, half away from zero.
Hours hoursFor(Quantity quantity, MinutesPerUnit minutes, double factor);

/// Hours at an hourly rate, rounded to the cent.
Money labourCost(Hours hours, Money rate);

} // namespace miterbook
