// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/book.h"
#include "store/connection.h"

namespace miterbook {

/// Plan sets, plans, houses and bid setups; nothing below a plan.
Result<JobTables> loadJobs(Connection& connection);

} // namespace miterbook
