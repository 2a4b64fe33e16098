// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "hours/house_progress.h"
#include "widgets/column.h"

#include <span>

namespace miterbook {

/// A line of a house's hours against its bid: of one piece of work, or of all.
struct ProgressRow {
    Id<House> house;
    WorkProgress work; ///< of all: the sums
    Money crewRate;    ///< of the bid
    Hours lost;        ///< of all: waiting and callbacks, which are in `used`
    bool all = false;

    Hours over() const { return work.forecast - work.bid; }
    bool operator==(const ProgressRow&) const = default;
};

/// The pieces of work, then all of them together.
std::vector<ProgressRow> progressRows(
    Id<House> house, const HouseProgress& progress, Money crewRate);

/// What is done can be typed where nothing counts it; all else is computed.
std::span<const Column<ProgressRow>> progressColumns();

} // namespace miterbook
