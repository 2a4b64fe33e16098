// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/fields.h"
#include "basics/id.h"
#include "hours/work_bid.h"

#include <vector>

namespace miterbook {

// The bid of a house as it was won, kept because the book's rates go on changing: what its hours
// are held against, and what the shop learns from. Written once; rows hang on the house's own plan.

/// One piece of work of a bid that was won.
struct SoldWork {
    Id<SoldWork> id;
    Id<Plan> plan; ///< the house's own
    PieceOfWork work = PieceOfWork::doors;
    Hours hours;
    Money labour;
    Quantity units;
    Money cost;
    Money price;

    bool operator==(const SoldWork&) const = default;
};

template <>
struct Describe<SoldWork> {
    static constexpr std::string_view table = "sold_work";
    static constexpr std::string_view noun = "piece of work of a bid that was won";
    static constexpr void allFields(auto&& take) {
        take(field("id", &SoldWork::id), field("plan", &SoldWork::plan),
            field("work", &SoldWork::work), field("hours", &SoldWork::hours),
            field("labour", &SoldWork::labour), field("units", &SoldWork::units),
            field("cost", &SoldWork::cost), field("price", &SoldWork::price));
    }
};

/// One task of a bid that was won, under its conditions.
struct SoldTask {
    Id<SoldTask> id;
    Id<Plan> plan; ///< the house's own
    PieceOfWork work = PieceOfWork::doors;
    Task task = Task::other;
    Conditions conditions;
    Percent factor = Percent::hundred(); ///< of the conditions, by the book of the day
    Quantity quantity;
    Hours hours;

    bool operator==(const SoldTask&) const = default;
};

template <>
struct Describe<SoldTask> {
    static constexpr std::string_view table = "sold_task";
    static constexpr std::string_view noun = "task of a bid that was won";
    static constexpr void allFields(auto&& take) {
        take(field("id", &SoldTask::id), field("plan", &SoldTask::plan),
            field("work", &SoldTask::work), field("task", &SoldTask::task),
            field("conditions", &SoldTask::conditions), field("factor", &SoldTask::factor),
            field("quantity", &SoldTask::quantity), field("hours", &SoldTask::hours));
    }
};

SoldWork soldWork(const WorkBid& bid);
WorkBid workBid(const SoldWork& sold);
SoldTask soldTask(const EstimateLine& line);
/// As far as it is kept: work, task, conditions, factor, quantity, hours.
EstimateLine estimateLine(const SoldTask& sold);

} // namespace miterbook
