// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "bid/risk.h"
#include "figures/figure_model.h"

#include <string>
#include <vector>

namespace miterbook {

/// What the outlook comes to in plain sentences; says so where the shop has no finished house.
QString riskSentences(const RiskOutlook& outlook, const std::string& currency);

/// Hours, cost and price for some certainties.
QStringList certaintyTitles();
std::vector<FigureRow> certaintyRows(const RiskOutlook& outlook, Money profit);

/// Which pieces of work carry the risk.
QStringList workRiskTitles();
std::vector<FigureRow> workRiskRows(const RiskOutlook& outlook);

} // namespace miterbook
