// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "io/schedule_reading.h"
#include "job/edit.h"

#include <string>
#include <string_view>
#include <vector>

namespace miterbook {

/// The edit that brings in a reading's good rows and remembers the user's choices of headers:
/// "Bring in 18 windows from windows.csv". Empty when there are no good rows. The reading must have
/// been made for this plan of this book.
Edit scheduleEdit(const Book& book, IdSource& ids, const ScheduleTarget& target,
    const ScheduleReading& reading, std::string_view fileName);

/// The edit that adds levels of these names below a plan's own, 8 ft high, upper ones as their
/// names say. For the missingLevels of a reading; read the schedule again afterwards.
Edit levelsEdit(
    const Book& book, IdSource& ids, Id<Plan> plan, const std::vector<std::string>& names);

} // namespace miterbook
