// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "cut/measured_opening.h"
#include "cut/opening_units.h"
#include "cut/savings.h"
#include "cut/saw_check.h"
#include "cut/saw_sheet.h"
#include "job/figures.h"

#include <optional>

namespace miterbook {

/// Everything that is reckoned for the day at the saw.
struct CutFigures {
    std::vector<OpeningUnit> units; ///< in walking order
    SawSheet sheet;
    SawCorrection correction;     ///< what the saw wants added to every setting
    std::optional<double> corner; ///< mean of the test corners, degrees
};

/// The saw sheet of an opened job from its figures: measured sizes in place of the plan's, out of
/// the offcuts in the rack and the sticks that the order buys.
CutFigures cutFiguresFor(const Book& book, const JobFigures& figures);

/// What batching saves on one level, or on all where it is none.
BatchSavings savingsOn(const CutFigures& figures, const Bench& bench, Id<Level> level);

} // namespace miterbook
