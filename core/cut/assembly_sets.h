// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "cut/assembly_line.h"
#include "cut/saw_sheet.h"

#include <string>
#include <vector>

namespace miterbook {

/// The pieces of one cased face of an opening that are joined before they are hung.
struct AssemblySet {
    std::string name; ///< "W4", "D2 face 2"
    std::int64_t source = 0;
    int unit = 1;
    int face = 1;
    Id<Level> level;
    Id<Profile> profile;
    int corners = 0;      ///< mitered joints
    int fasteners = 0;    ///< mechanical joints in each corner
    Length longest;       ///< long point of its longest side
    bool onFloor = false; ///< too large for the bench: joined on the floor by its opening
    int ready = 0;        ///< place of the last stop it waits for, in the order of the sheet
    PieceState state = PieceState::listed;
    std::vector<std::size_t> pieces;
    SetTimes times; ///< of the sets at the bench

    bool operator==(const AssemblySet&) const = default;
};

/// How the bench does with the way of joining in use.
struct AssemblyPlan {
    std::vector<AssemblySet> bench; ///< in the order in which the saw completes them
    std::vector<AssemblySet> floor;
    std::string joining;
    CornerWork work;
    double firstOff = 0;    ///< minutes until the first set is off the bench
    double setsPerHour = 0; ///< of the usual set
    int usualCorners = 4;
    int clampsNeeded = 0; ///< that would never wait

    bool operator==(const AssemblyPlan&) const = default;
};

/// Sets of a sheet on one level (none: all) that are not hung yet, in the order in which their last
/// piece comes off the saw, so that the bench starts with the first stop that completes a set.
AssemblyPlan assemblyPlan(
    const SawSheet& sheet, Id<Level> level, const Bench& bench, const PriceBook& prices);

} // namespace miterbook
