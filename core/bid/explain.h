// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "bid/estimate.h"

#include <string>
#include <string_view>
#include <vector>

namespace miterbook {

// Where a number of the estimate came from, as a short list of plain sentences for a screen.

/// A line's hours and money: the sources with their quantities (the first dozen, then how many
/// more), the rate and whose it is, each factor, the crew rate, the piece price.
std::vector<std::string> explainLine(
    const EstimateLine& line, const Takeoff& takeoff, const PriceBook& prices, Money crewRate);

/// The crew rate: wages, burden items, hours a year.
std::vector<std::string> explainCrewRate(const PriceBook& prices);

/// The whole price: labour, material, consumables, overhead, contingency, profit both
/// ways.
std::vector<std::string> explainPrice(
    const Estimate& estimate, const BidSetup& setup, std::string_view currency = {});

/// The material of one piece of work: its share of each profile, its parts and goods, and the tax.
std::vector<std::string> explainMaterial(const WorkTotal& work, const Takeoff& takeoff,
    const std::vector<StickPlan>& sticks, const PriceBook& prices, const BidSetup& setup);

/// Days of 8 hours that a crew of so many takes; people must be positive. `6.1 days of 8 hours`.
std::string crewDays(Hours hours, int people);

} // namespace miterbook
