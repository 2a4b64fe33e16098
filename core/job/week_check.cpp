// SPDX-License-Identifier: GPL-3.0-or-later
#include "job/week_check.h"

#include <algorithm>

namespace miterbook {

namespace {

/// The entries of an edit as they were and as they will be.
std::vector<const TimeEntry*> entriesIn(const Edit& edit) {
    std::vector<const TimeEntry*> entries;
    for (const Change& change : edit.changes) {
        for (const auto* side : {&change.before, &change.after}) {
            if (const auto* entry = rowIn<TimeEntry>(*side))
                entries.push_back(entry);
        }
    }
    return entries;
}

bool takesBack(const Edit& edit, Id<WeekApproval> id) {
    return std::ranges::any_of(edit.changes, [&](const Change& change) {
        const WeekApproval* approval = change.row().as<WeekApproval>();
        return approval && approval->id == id && !change.after;
    });
}

} // namespace

Result<void> checkWeeksOpen(const Book& book, const Edit& edit) {
    const auto entries = entriesIn(edit);
    if (entries.empty())
        return {};
    std::vector<WeekApproval> approvals;
    for (const auto& [id, approval] : book.jobs.of<WeekApproval>()) {
        if (!takesBack(edit, id))
            approvals.push_back(approval);
    }
    for (const TimeEntry* entry : entries) {
        const CrewMember* person = book.prices.of<CrewMember>().find(entry->person);
        auto open = checkNotApproved(approvals, *entry, person ? person->name : "somebody");
        if (!open)
            return open;
    }
    return {};
}

} // namespace miterbook
