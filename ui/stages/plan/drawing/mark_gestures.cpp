// SPDX-License-Identifier: GPL-3.0-or-later
#include "stages/plan/drawing/mark_gestures.h"

#include "plan/plan_checks.h"

namespace miterbook {

namespace {

Result<void> checkMarks(MarkKind kind, const std::vector<PlanPoint>& marks) {
    if (kind == MarkKind::run && pathLength(marks) <= Length())
        return badInput("A run needs two points at least.");
    return kind == MarkKind::area ? checkOutline(marks, "The area") : Result<void>();
}

} // namespace

Result<Edit> marksAdded(const DrawnLevel& level, IdSource& ids, const MarkChoice& choice,
    MarkKind kind, std::vector<PlanPoint> marks) {
    if (!level.level())
        return badInput("The plan needs a level before anything can be marked on it.");
    if (auto fine = checkMarks(kind, marks); !fine)
        return fine.error();
    if (unitOf(choice.task) != unitOf(kind))
        return badInput("The task \"" + std::string(word(choice.task)) + "\" is not counted by the "
            + std::string(word(unitOf(kind))) + ".");
    OtherWork work;
    work.plan = level.target().plan;
    work.level = level.level();
    work.position = nextPosition(level.sheet().of<OtherWork>());
    work.name = choice.name.empty() ? std::string(word(choice.task)) : choice.name;
    work.task = choice.task;
    work.profile = choice.profile;
    if (const Room* room = level.roomAt(marks.front()))
        work.room = Id<Room>(rowKey(*room));
    setMarks(work, kind, std::move(marks));
    EditBuilder edit(level.book(), "Mark " + work.name);
    storeRow(edit, ids, level.target(), std::move(work));
    return edit.take();
}

Result<Edit> markAppended(
    const DrawnLevel& level, IdSource& ids, std::int64_t key, PlanPoint mark) {
    const OtherWork* before = level.work(key);
    if (!before || before->marked != MarkKind::count)
        return badInput("Choose work that is counted by marks first.");
    OtherWork after = *before;
    std::vector<PlanPoint> marks = after.marks;
    marks.push_back(mark);
    setMarks(after, MarkKind::count, std::move(marks));
    EditBuilder edit(level.book(), "Mark " + after.name);
    storeRow(edit, ids, level.target(), std::move(after));
    return edit.take();
}

std::vector<Task> tasksIn(Unit unit) {
    std::vector<Task> tasks;
    for (const auto& entry : Words<Task>::list) {
        if (unitOf(entry.value) == unit)
            tasks.push_back(entry.value);
    }
    return tasks;
}

} // namespace miterbook
