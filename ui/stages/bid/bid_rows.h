// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "figures/figure_model.h"
#include "job/figures.h"

#include <vector>

namespace miterbook {

/// "stain grade, 9 ft ceiling"; empty for none.

/// The estimate as rows of figures: by piece of work with the total last, and line by line.
std::vector<FigureRow> workRows(const JobFigures& figures, const PriceBook& prices);
std::vector<FigureRow> lineRows(const JobFigures& figures, const PriceBook& prices);

} // namespace miterbook
