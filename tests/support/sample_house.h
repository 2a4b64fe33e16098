// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "book/price_book.h"
#include "plan/whole_plan.h"

namespace miterbook {

/// An invented two-storey tract house of 2,400 square feet: 18 doors (13 prehung, 2 bifold, 1
/// double, front and garage entry), 18 windows (stool and apron below, picture frames above), about
/// 650 ft of base and shoe, seven closets and one stair. One elevation (more windows) and one
/// option (crown).
struct SampleHouse {
    Plan plan;
    PlanRows rows;
    Id<Variant> elevation; ///< "B": the study gets a third window, the entry's is wider
    Id<Variant> crownPack; ///< crown in great room and dining

    WholePlan whole(const Selection& selection = {}) const {
        return wholePlan(plan, rows, selection);
    }
};

/// The house with the first profile of each use that the book has; ids come from `ids`.
SampleHouse sampleHouse(const PriceBook& prices, IdSource& ids);

} // namespace miterbook
