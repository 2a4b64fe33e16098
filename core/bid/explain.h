// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "bid/estimate.h"

#include <string>
#include <vector>

namespace miterbook {

/// Where a line's hours and money come from, in plain sentences: the sources with their quantities,
/// the rate and whose it is, each factor, the crew rate.
std::vector<std::string> explainLine(const EstimateLine& line, const Takeoff& takeoff,
    const PriceBook& prices, Money crewRate);

/// Where the crew rate comes from: wages, burden items, hours a year.
std::vector<std::string> explainCrewRate(const PriceBook& prices);

/// Where the price comes from: labour, material, consumables, overhead, profit both ways.
std::vector<std::string> explainPrice(const Estimate& estimate, const BidSetup& setup);

} // namespace miterbook
