// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "batch/console.h"
#include "batch/opened_book.h"
#include "io/schedule.h"

#include <string>

namespace miterbook {

/// Schedules of one plan to bring in; an empty path: not given.
struct SchedulesToBring {
    std::string builder;
    std::string plan;
    std::string level; ///< of rows that name none; empty: the plan's only or first level
    std::string rooms; ///< read first: openings name rooms
    std::string windows;
    std::string doors;
    bool goodRows = false; ///< bring in the good rows of a schedule that has bad ones
};

/// Brings schedules into a plan, which is begun when the builder has none of that name. All of it
/// or nothing: with rows that cannot be read nothing is brought in, or the good rows when asked so;
/// each bad row is said on console.err.
Result<void> bringSchedules(OpenedBook& opened, const SchedulesToBring& wanted, Console& console);

} // namespace miterbook
