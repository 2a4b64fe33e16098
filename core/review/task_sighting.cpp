// SPDX-License-Identifier: GPL-3.0-or-later
#include "review/task_sighting.h"

#include <algorithm>
#include <map>
#include <set>

namespace miterbook {

namespace {

using LineMinutes = std::vector<double>;

/// Adds time to the lines that `fits`, by their bid hours. False where none has any.
template <class Fits>
bool spread(double minutes, const std::vector<EstimateLine>& lines, Fits fits, LineMinutes& used) {
    double bid = 0;
    for (const EstimateLine& line : lines)
        bid += fits(line) ? static_cast<double>(line.hours.minutes()) : 0;
    if (bid <= 0)
        return false;
    for (std::size_t i = 0; i < lines.size(); ++i) {
        if (fits(lines[i]))
            used[i] += minutes * static_cast<double>(lines[i].hours.minutes()) / bid;
    }
    return true;
}

struct WorkTime {
    std::map<Task, double> named;
    double rest = 0;
};

std::map<PieceOfWork, WorkTime> workTimes(const std::vector<TimeEntry>& entries) {
    std::map<PieceOfWork, WorkTime> times;
    for (const TimeEntry& entry : entries) {
        if (entry.kind != TimeKind::work)
            continue;
        const auto minutes = static_cast<double>(entry.time.minutes());
        if (entry.task == Task::other)
            times[entry.work].rest += minutes;
        else
            times[entry.work].named[entry.task] += minutes;
    }
    return times;
}

} // namespace

std::vector<TaskSighting> taskSightings(Id<House> house, Date finished,
    const std::vector<EstimateLine>& lines, const std::vector<TimeEntry>& entries) {
    LineMinutes used(lines.size());
    std::set<std::pair<PieceOfWork, Task>> timed;
    for (const auto& [work, time] : workTimes(entries)) {
        const auto ofWork = [w = work](const EstimateLine& line) { return line.work == w; };
        for (const auto& [task, minutes] : time.named) {
            const auto fits = [&, t = task](const EstimateLine& line) {
                return ofWork(line) && line.task == t;
            };
            if (spread(minutes, lines, fits, used))
                timed.emplace(work, task);
        }
        const auto unnamed = [&](const EstimateLine& line) {
            return ofWork(line) && !timed.contains({line.work, line.task});
        };
        if (time.rest > 0 && !spread(time.rest, lines, unnamed, used))
            spread(time.rest, lines, ofWork, used);
    }
    std::vector<TaskSighting> sightings;
    for (std::size_t i = 0; i < lines.size(); ++i) {
        const EstimateLine& line = lines[i];
        if (used[i] > 0 && line.quantity > Quantity()) {
            sightings.push_back({house, finished, line.task, line.conditions, line.factor,
                line.quantity, line.hours, used[i], timed.contains({line.work, line.task})});
        }
    }
    return sightings;
}

std::vector<RateSighting> rateSightings(
    const std::vector<TaskSighting>& sightings, Task task, std::optional<Conditions> only) {
    // One sighting for each house: its lines under several conditions are no houses of their own.
    std::map<std::pair<Date, Id<House>>, RateSighting> houses;
    for (const TaskSighting& sighting : sightings) {
        if (sighting.task != task || (only && sighting.conditions != *only))
            continue;
        RateSighting& house = houses[{sighting.date, sighting.house}];
        house.date = sighting.date;
        house.quantity += sighting.quantity;
        house.minutes += only ? sighting.minutes : sighting.minutes / sighting.factor;
    }
    std::vector<RateSighting> list;
    for (const auto& [key, house] : houses)
        list.push_back(house);
    return list;
}

} // namespace miterbook
