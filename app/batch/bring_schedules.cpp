// SPDX-License-Identifier: GPL-3.0-or-later
#include "batch/bring_schedules.h"

#include "batch/find.h"
#include "io/file_bytes.h"
#include "io/schedule_edit.h"
#include "job/gathered_edit.h"
#include "job/new_plan.h"

namespace miterbook {

namespace {

/// The plan, begun when the builder has none of that name.
Result<Id<Plan>> planFor(GatheredEdit& all, IdSource& ids, const SchedulesToBring& wanted) {
    if (const auto id = planOfBuilder(all.book(), wanted.builder, wanted.plan))
        return id;
    const auto edit = newPlan(all.book(), ids, {wanted.builder, {}, wanted.plan, 0});
    if (!edit)
        return edit.error();
    if (const auto added = all.add(*edit); !added)
        return added.error();
    return planOfBuilder(all.book(), wanted.builder, wanted.plan);
}

/// The level for rows that name none; made when it is named and the plan lacks it.
Result<Id<Level>> targetLevel(
    GatheredEdit& all, IdSource& ids, Id<Plan> plan, const std::string& name) {
    const auto& levels = all.book().sheet(plan).of<Level>();
    if (name.empty())
        return levels.empty() ? Id<Level>() : levels.begin()->first;
    if (const auto found = findLevel(all.book(), plan, name))
        return found;
    if (const auto added = all.add(levelsEdit(all.book(), ids, plan, {name})); !added)
        return added.error();
    return findLevel(all.book(), plan, name);
}

void report(const ScheduleReading& reading, const std::string& file, Console& console) {
    for (const Rejection& rejection : reading.rejected)
        console.err << file << ", " << ScheduleReading::sentence(rejection) << '\n';
    for (const std::string& remark : reading.remarks)
        console.out << file << ", " << remark << '\n';
    for (const std::string& title : reading.unmapped)
        console.out << file << ": the column \"" << title << "\" was not understood and left out\n";
}

/// Reads a schedule, adding levels that it names and the plan lacks.
Result<ScheduleReading> readWithLevels(GatheredEdit& all, IdSource& ids, ScheduleKind kind,
    const std::string& bytes, const ScheduleTarget& target) {
    auto reading = readSchedule(kind, bytes, all.book(), target);
    if (!reading || reading->missingLevels.empty())
        return reading;
    const Edit levels = levelsEdit(all.book(), ids, target.plan, reading->missingLevels);
    if (const auto added = all.add(levels); !added)
        return added.error();
    return readSchedule(kind, bytes, all.book(), target);
}

/// What was brought in of one file, in words.
Result<std::string> bringOne(GatheredEdit& all, IdSource& ids, ScheduleKind kind,
    const std::string& path, const ScheduleTarget& target, bool goodRows, Console& console) {
    const auto bytes = readFileBytes(path);
    if (!bytes)
        return bytes.error();
    const std::string file = fileName(path);
    const auto reading = readWithLevels(all, ids, kind, *bytes, target);
    if (!reading)
        return badInput(file + ": " + reading.error().sentence);
    if (!reading->missing.empty())
        return badInput(file + ": " + reading->missingSentence());
    report(*reading, file, console);
    const std::string good = std::to_string(reading->rows.size());
    if (reading->rejectedRows() > 0 && !goodRows)
        return badInput(file + ": " + std::to_string(reading->rejectedRows())
            + " rows could not be read, so nothing was brought in; --good-rows brings in the other "
            + good + ".");
    if (const auto added = all.add(scheduleEdit(all.book(), ids, target, *reading, file)); !added)
        return added.error();
    return file + ": " + good + " " + std::string(word(kind)) + " brought in\n";
}

} // namespace

Result<void> bringSchedules(OpenedBook& opened, const SchedulesToBring& wanted, Console& console) {
    if (const auto id = planOfBuilder(opened.book(), wanted.builder, wanted.plan)) {
        if (const auto open = opened.workbook.openPlan(id); !open)
            return open;
    }
    GatheredEdit all(opened.book());
    IdSource& ids = opened.workbook.ids();
    const auto plan = planFor(all, ids, wanted);
    if (!plan)
        return plan.error();
    const auto level = targetLevel(all, ids, *plan, wanted.level);
    if (!level)
        return level.error();
    const ScheduleTarget target{*plan, *level};
    const std::pair<ScheduleKind, const std::string&> files[]{{ScheduleKind::rooms, wanted.rooms},
        {ScheduleKind::windows, wanted.windows}, {ScheduleKind::doors, wanted.doors}};
    std::string brought;
    for (const auto& [kind, path] : files) {
        if (path.empty())
            continue;
        const auto words = bringOne(all, ids, kind, path, target, wanted.goodRows, console);
        if (!words)
            return words.error();
        brought += *words;
    }
    if (const auto done = opened.perform(
            std::move(all).take("Bring in schedules of plan " + wanted.plan));
        !done)
        return done;
    console.out << brought;
    return {};
}

} // namespace miterbook
