// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/keeper.h"
#include "review/task_sighting.h"

#include <optional>
#include <string>
#include <vector>

namespace miterbook {

/// A labour rate under some conditions by themselves.
struct ConditionRate {
    Conditions conditions;
    int houses = 0;
    MinutesPerUnit book; ///< the task's rate before learning, times the book's factors
    LearnedRate learned;
};

/// A labour rate of the book and what finished houses say of it.
struct TaskRate {
    LabourRate held;        ///< as the book has it
    MinutesPerUnit starter; ///< what learning starts at: the starter's, or the shop's own
    LearnedRate learned;    ///< from all houses, brought to plain conditions
    std::vector<RateSighting> sightings;
    std::vector<ConditionRate> apart; ///< by conditions, plain first; none when there is one kind

    /// Learned as the book writes rates: hundredths of a minute.
    MinutesPerUnit learnedMinutes() const;
    /// "learned from 12 houses to 2026-11-25: 31.2 to 34 of the 35 it began with"
    std::string evidence(LengthUnit written) const;
};

/// What every finished house says about every task of its bid.
std::vector<TaskSighting> allSightings(const Book& book, const SoldTasks& sold);

/// The rates that houses say something of, in the order of tasks. A rate that was learned before is
/// learned again from where it began, so that no house counts twice.
std::vector<TaskRate> taskRates(const Book& book, const std::vector<TaskSighting>& sightings);

/// The learned rate after each house, or after some `points` of them where there are more.
std::vector<RateTrendPoint> trendOf(const TaskRate& rate, std::size_t points = 60);

/// The one edit that puts a learned rate into the book with its evidence.
Edit acceptRateEdit(const Book& book, const TaskRate& rate);

} // namespace miterbook
