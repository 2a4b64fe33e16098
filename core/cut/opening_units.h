// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/table.h"
#include "cut/measure.h"
#include "plan/whole_plan.h"

#include <string>
#include <vector>

namespace miterbook {

/// One opening to be measured: of several alike each is one.
struct OpeningUnit {
    Opening opening;
    int unit = 1;
    std::string name; ///< "W4", "W4.2"
    Measure measure;  ///< its id is none where it has not been measured

    bool operator==(const OpeningUnit&) const = default;
};

/// The openings of a house, or of one level of it, in walking order: by level, then by the places
/// that were given when measuring, then as the plan has them. Openings without trim are left out.
std::vector<OpeningUnit> openingUnits(
    const WholePlan& whole, const Table<Measure>& measures, Id<Level> level = {});

} // namespace miterbook
