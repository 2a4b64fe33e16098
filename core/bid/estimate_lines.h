// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "bid/estimate.h"

namespace miterbook {

/// The lines of an estimate, in piece of work, then task order: the takeoff's tasks gathered by
/// conditions, each with its hours and its labour at the crew rate. A task that the book has no
/// rate for takes no hours and is added to `problems`.
std::vector<EstimateLine> estimateLines(const Takeoff& takeoff, const PriceBook& prices,
    Money crewRate, std::vector<std::string>& problems);

/// quantity x minutes x factor, rounded once to the minute. The factor counts to eight decimals.
Hours hoursFor(Quantity quantity, MinutesPerUnit minutes, double factor);

/// Hours at a rate an hour, rounded once to the cent.
Money labourFor(Hours hours, Money rate);

} // namespace miterbook
