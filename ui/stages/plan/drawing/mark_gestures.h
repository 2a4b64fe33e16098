// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "plan/marks.h"
#include "stages/plan/drawing/drawn_level.h"

namespace miterbook {

/// Work that is counted or measured on the drawing: what it is called, which task, and its material
/// where it runs along a profile.
struct MarkChoice {
    std::string name;
    Task task = Task::atticAccess;
    Id<Profile> profile;
};

/// New other work from marks: one line of the takeoff, whose place is the marks.
Result<Edit> marksAdded(const DrawnLevel& level, IdSource& ids, const MarkChoice& choice,
    MarkKind kind, std::vector<PlanPoint> marks);
/// One more mark to work that is counted.
Result<Edit> markAppended(
    const DrawnLevel& level, IdSource& ids, std::int64_t work, PlanPoint mark);

/// The tasks that are counted in a unit, in the order of the book.
std::vector<Task> tasksIn(Unit unit);

} // namespace miterbook
