// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/keeper.h"
#include "store/connection.h"

namespace miterbook {

/// What all time entries add up to.
Result<void> sumTime(Connection& connection, TimeBook& time);

Result<Table<TimeEntry>> loadTimeEntries(Connection& connection, const TimeAsked& asked);

/// The tasks of all bids that were won.
Result<SoldTasks> loadSoldTasks(Connection& connection);

} // namespace miterbook
