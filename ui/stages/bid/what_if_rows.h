// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "figures/figure_model.h"
#include "job/scenario_figures.h"
#include "widgets/column.h"

#include <QStringList>

#include <span>
#include <vector>

namespace miterbook {

/// What a scenario changes, to be typed.
std::span<const Column<Scenario>> scenarioColumns();

/// Outcomes side by side, the first being the bid as it is.
QStringList outcomeTitles();
std::vector<FigureRow> outcomeRows(const std::vector<BidOutcome>& outcomes);

} // namespace miterbook
