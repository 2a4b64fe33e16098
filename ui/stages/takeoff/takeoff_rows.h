// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "figures/figure_model.h"
#include "job/figures.h"

#include <vector>

namespace miterbook {

/// The takeoff as rows of figures: every piece, running feet and counts by room, what is worth
/// knowing.
std::vector<FigureRow> pieceRows(const JobFigures& figures, const PriceBook& prices);
std::vector<FigureRow> placeRows(const JobFigures& figures, const PriceBook& prices);
std::vector<FigureRow> totalRows(const JobFigures& figures, const PriceBook& prices);
/// Without the reminders that were put away.
std::vector<FigureRow> remarkRows(
    const JobFigures& figures, const PriceBook& prices, const Table<Dismissal>& dismissals);

} // namespace miterbook
