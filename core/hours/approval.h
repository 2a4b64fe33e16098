// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "hours/week.h"

#include <string>

namespace miterbook {

/// Somebody has looked at a person's week and found it right: its entries do not change any more.
struct WeekApproval {
    Id<WeekApproval> id;
    Date week = noDate; ///< its first day
    Id<CrewMember> person;
    Date approved = noDate;
    std::string by;

    bool operator==(const WeekApproval&) const = default;
};

template <>
struct Describe<WeekApproval> {
    static constexpr std::string_view table = "week_approval";
    static constexpr std::string_view noun = "approved week";
    static constexpr void allFields(auto&& take) {
        take(field("id", &WeekApproval::id), field("week", &WeekApproval::week),
            field("person", &WeekApproval::person), field("approved", &WeekApproval::approved),
            field("by", &WeekApproval::by));
    }
};

/// Whether the person's week that the day is in has been approved.
bool isApproved(const std::vector<WeekApproval>& approvals, Id<CrewMember> person, Date day);

/// Error with a sentence when an approved week would change: ask before an entry is put or removed.
Result<void> checkNotApproved(
    const std::vector<WeekApproval>& approvals, const TimeEntry& entry, const std::string& name);

/// Approvals for everybody in the week who has none yet. Error: a sentence when the week is not
/// over on `today`, or when there is nothing to approve.
Result<std::vector<WeekApproval>> approveWeek(const Week& week,
    const std::vector<WeekApproval>& approvals, Date today, const std::string& by, IdSource& ids);

} // namespace miterbook
