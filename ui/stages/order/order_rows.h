// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "figures/figure_model.h"
#include "job/figures.h"

#include <QString>

#include <vector>

namespace miterbook {

/// The order as rows of figures: what to buy with the total last, and how each stick is cut.
std::vector<FigureRow> buyRows(const JobFigures& figures, const PriceBook& prices);
std::vector<FigureRow> patternRows(const JobFigures& figures, const PriceBook& prices);

/// How good the stick plans are, in plain words: "which cannot be bought cheaper", "within $3.10 of
/// the best possible".
QString boundText(const std::vector<StickPlan>& plans, const PriceBook& prices);

/// "16 ft", or "7' 6\"" where a stick is not whole feet long; "4800 mm" where the shop writes so.
QString stickText(Length stick, const Shop& shop);

/// "421.3 LF", "128.4 m".
QString runText(Length run, LengthUnit written);

} // namespace miterbook
