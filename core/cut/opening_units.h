// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/table.h"
#include "cut/measure.h"
#include "cut/measured_opening.h"
#include "plan/whole_plan.h"

#include <string>
#include <vector>

namespace miterbook {

/// One opening to be measured: of several alike each is one.
struct OpeningUnit {
    Opening opening;
    int unit = 1;
    std::string name; ///< "W4", "W4.2"
    Measure measure;  ///< its id is none where nothing is kept of it
    int place = 0;    ///< sorts it among those of its level
    int number = 0;   ///< in walking order on its level, from 1

    bool isMeasured() const { return readingsIn(measure) > 0; }
    bool operator==(const OpeningUnit&) const = default;
};

/// From one opening as the plan has them to the next, so that others can be put between.
inline constexpr int placeStep = 10'000;

/// The openings of a house, or of one level of it, in walking order: by level, then by the places
/// that were given when measuring, else as the plan has them. Openings without trim are left out.
std::vector<OpeningUnit> openingUnits(
    const WholePlan& whole, const Table<Measure>& measures, Id<Level> level = {});

/// The place that makes an opening the n-th of its level; its own where it is that already.
int placeFor(const std::vector<OpeningUnit>& units, const OpeningUnit& unit, int number);

} // namespace miterbook
