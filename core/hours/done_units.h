// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "hours/time_entry.h"

#include <optional>

namespace miterbook {

/// The unit in which a piece of work is said to be finished: doors and windows each, base by the
/// running foot. Unit::hour where there is nothing to count.
Unit doneUnit(PieceOfWork work);
/// The same of one of its tasks; Task::other: of the piece of work.
Unit doneUnit(PieceOfWork work, Task task);
/// The unit of an entry's `done`: its task's where one is said, else its piece of work's.
Unit doneUnit(const TimeEntry& entry);

/// Whether finishing one of the task finishes one of its piece of work: a window's frame does, its
/// jamb extension does not.
bool countsAsDone(Task task);

/// The piece of work whose bid hours the time is held against: travel against trips, punch against
/// punch. Nothing for waiting and callbacks: nobody bids them.
std::optional<PieceOfWork> bidWorkOf(const TimeEntry& entry);

} // namespace miterbook
