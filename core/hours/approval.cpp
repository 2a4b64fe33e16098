// SPDX-License-Identifier: GPL-3.0-or-later
#include "hours/approval.h"

#include <algorithm>

namespace miterbook {

bool isApproved(const std::vector<WeekApproval>& approvals, Id<CrewMember> person, Date day) {
    return std::ranges::any_of(approvals, [&](const WeekApproval& approval) {
        return approval.person == person && approval.week <= day
            && day < addDays(approval.week, static_cast<int>(daysOfWeek));
    });
}

Result<void> checkNotApproved(
    const std::vector<WeekApproval>& approvals, const TimeEntry& entry, const std::string& name) {
    if (!isApproved(approvals, entry.person, entry.date))
        return {};
    return Error{Fault::conflict,
        "The week of " + name + " with " + isoDate(entry.date)
            + " has been approved; take back the approval to change it."};
}

/// Two approvals may share a week where the shop has moved the day on which its weeks begin.
static bool isWholeWeekApproved(
    const std::vector<WeekApproval>& approvals, Id<CrewMember> person, const Week& week) {
    for (std::size_t day = 0; day < daysOfWeek; ++day) {
        if (!isApproved(approvals, person, week.day(day)))
            return false;
    }
    return true;
}

Result<std::vector<WeekApproval>> approveWeek(const Week& week,
    const std::vector<WeekApproval>& approvals, Date today, const std::string& by, IdSource& ids) {
    if (today <= week.day(daysOfWeek - 1))
        return badInput("The week of " + isoDate(week.first) + " is not over yet.");
    std::vector<WeekApproval> made;
    for (const Id<CrewMember> person : week.people()) {
        if (!isWholeWeekApproved(approvals, person, week))
            made.push_back({ids.next<WeekApproval>(), week.first, person, today, by});
    }
    if (made.empty())
        return badInput(
            "There is nothing left to approve in the week of " + isoDate(week.first) + ".");
    return made;
}

} // namespace miterbook
