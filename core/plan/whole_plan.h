// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/result.h"
#include "plan/plan_rows.h"

#include <string>
#include <vector>

namespace miterbook {

/// Which elevation and options of a plan are meant; none of either is the base plan.
struct Selection {
    Id<Variant> elevation;
    std::vector<Id<Variant>> options;

    bool operator==(const Selection&) const = default;
};

/// A plan with its differences taken in: what is really built. Rows are in position order; none is
/// removed, none belongs to a variant that was not selected. A changed row keeps the id of the row
/// it replaces, so that references to it still hold.
struct WholePlan {
    Plan plan;
    std::vector<Level> levels;
    std::vector<Room> rooms;
    std::vector<Opening> openings;
    std::vector<Closet> closets;
    std::vector<Stair> stairs;
    std::vector<WallTreatment> treatments;
    std::vector<OtherWork> others;
    std::vector<std::string> remarks; ///< two options that change the same row, and the like

    // Out of line: copying all these rows is much code in each file.
    WholePlan();
    WholePlan(const WholePlan&);
    WholePlan(WholePlan&&) noexcept;
    WholePlan& operator=(const WholePlan&);
    WholePlan& operator=(WholePlan&&) noexcept;
    ~WholePlan();

    const Level* level(Id<Level> id) const;
    const Room* room(Id<Room> id) const;

    bool operator==(const WholePlan&) const;
};

/// The whole plan for a selection. Swaps are applied to every profile the plan uses. Where two
/// selected variants change the same row, the later one in the selection wins and a remark says so.
/// An id in the selection that is no variant of the plan is left out with a remark.
WholePlan wholePlan(const Plan& plan, const PlanRows& rows, const Selection& selection = {});

/// Only what stands on one level (stairs and other work of no level are left out).
WholePlan onlyLevel(const WholePlan& whole, Id<Level> level);

} // namespace miterbook
