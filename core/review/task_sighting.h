// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "bid/estimate.h"
#include "hours/time_entry.h"
#include "review/learned_rate.h"

#include <optional>
#include <vector>

namespace miterbook {

/// What a finished house says about one task under its conditions.
struct TaskSighting {
    Id<House> house;
    Date date = noDate;
    Task task = Task::other;
    Conditions conditions;
    double factor = 1.0; ///< of the conditions, by the book of the bid
    Quantity quantity;
    Hours bid;
    double minutes = 0; ///< used
    bool timed = false; ///< by entries that name the task; else shared out by bid hours

    bool operator==(const TaskSighting&) const = default;
};

/// Takes a finished house's work time apart into tasks. Entries that name a task go to it; the
/// others of a piece of work are shared out by bid hours over its tasks that no entry names (over
/// all of them when each is named). Lines of one task under several conditions share by bid hours.
/// Travel, waiting, punch and callbacks say nothing about a task, and a piece of work without time
/// gives no sighting.
std::vector<TaskSighting> taskSightings(Id<House> house, Date finished,
    const std::vector<EstimateLine>& lines, const std::vector<TimeEntry>& entries);

/// The sightings of a task for learnRate(): those of plain work and, brought to plain by the book's
/// factors, of all other conditions (none asked for); or those of just some conditions as they are.
std::vector<RateSighting> rateSightings(const std::vector<TaskSighting>& sightings, Task task,
    std::optional<Conditions> only = std::nullopt);

} // namespace miterbook
