// SPDX-License-Identifier: GPL-3.0-or-later
#include "batch/bring_schedules.h"

#include "batch/find.h"
#include "io/file_bytes.h"
#include "io/schedule_edit.h"
#include "job/new_plan.h"

namespace miterbook {

namespace {

Result<Id<Plan>> openOrBeginPlan(OpenedBook& opened, const SchedulesToBring& wanted) {
    if (const auto id = planOfBuilder(opened.book(), wanted.builder, wanted.plan)) {
        const auto open = opened.workbook.openPlan(id);
        return open ? Result<Id<Plan>>(id) : Result<Id<Plan>>(open.error());
    }
    const auto edit
        = newPlan(opened.book(), opened.workbook.ids(), {wanted.builder, {}, wanted.plan, 0});
    if (!edit)
        return edit.error();
    if (const auto done = opened.perform(*edit); !done)
        return done.error();
    return planOfBuilder(opened.book(), wanted.builder, wanted.plan);
}

Result<void> addLevels(OpenedBook& opened, Id<Plan> plan, const std::vector<std::string>& names) {
    return opened.perform(levelsEdit(opened.book(), opened.workbook.ids(), plan, names));
}

/// The level for rows that name none; made when it is named and the plan lacks it.
Result<Id<Level>> targetLevel(OpenedBook& opened, Id<Plan> plan, const std::string& name) {
    const auto& levels = opened.book().sheet(plan).of<Level>();
    if (name.empty())
        return levels.empty() ? Id<Level>() : levels.begin()->first;
    if (const auto found = findLevel(opened.book(), plan, name))
        return found;
    if (const auto added = addLevels(opened, plan, {name}); !added)
        return added.error();
    return findLevel(opened.book(), plan, name);
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
Result<ScheduleReading> readWithLevels(OpenedBook& opened, ScheduleKind kind,
    const std::string& bytes, const ScheduleTarget& target) {
    auto reading = readSchedule(kind, bytes, opened.book(), target);
    if (!reading || reading->missingLevels.empty())
        return reading;
    if (const auto added = addLevels(opened, target.plan, reading->missingLevels); !added)
        return added.error();
    return readSchedule(kind, bytes, opened.book(), target);
}

Result<void> bringOne(OpenedBook& opened, ScheduleKind kind, const std::string& path,
    const ScheduleTarget& target, bool goodRows, Console& console) {
    const auto bytes = readFileBytes(path);
    if (!bytes)
        return bytes.error();
    const std::string file = fileName(path);
    const auto reading = readWithLevels(opened, kind, *bytes, target);
    if (!reading)
        return badInput(file + ": " + reading.error().sentence);
    if (!reading->missing.empty())
        return badInput(file + ": " + reading->missingSentence());
    report(*reading, file, console);
    const std::string good = std::to_string(reading->rows.size());
    if (reading->rejectedRows() > 0 && !goodRows) {
        return badInput(file + ": " + std::to_string(reading->rejectedRows())
            + " rows could not be read, so none was brought in; --good-rows brings in the other "
            + good + ".");
    }
    const Edit edit = scheduleEdit(opened.book(), opened.workbook.ids(), target, *reading, file);
    if (const auto done = opened.perform(edit); !done)
        return done;
    console.out << file << ": " << good << ' ' << word(kind) << " brought in\n";
    return {};
}

} // namespace

Result<void> bringSchedules(OpenedBook& opened, const SchedulesToBring& wanted, Console& console) {
    const auto plan = openOrBeginPlan(opened, wanted);
    if (!plan)
        return plan.error();
    const auto level = targetLevel(opened, *plan, wanted.level);
    if (!level)
        return level.error();
    const ScheduleTarget target{*plan, *level};
    const std::pair<ScheduleKind, const std::string&> files[]{{ScheduleKind::rooms, wanted.rooms},
        {ScheduleKind::windows, wanted.windows}, {ScheduleKind::doors, wanted.doors}};
    for (const auto& [kind, path] : files) {
        if (path.empty())
            continue;
        if (const auto done = bringOne(opened, kind, path, target, wanted.goodRows, console); !done)
            return done;
    }
    return {};
}

} // namespace miterbook
