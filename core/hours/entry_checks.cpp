// SPDX-License-Identifier: GPL-3.0-or-later
#include "hours/entry_checks.h"

#include "basics/number_text.h"
#include "basics/quote.h"

#include <algorithm>
#include <map>
#include <tuple>

namespace miterbook {

namespace {

constexpr Hours wholeDay = Hours::whole(24);
constexpr Hours longDay = Hours::whole(16);

std::string nameOf(Id<CrewMember> person, const PersonNames& names) {
    const auto found = std::ranges::find(names, person, &PersonNames::value_type::first);
    return found == names.end() ? std::string("somebody") : found->second;
}

/// What two entries have in common when one of them is a slip.
auto sameThing(const TimeEntry& entry) {
    return std::tuple(entry.date, entry.person, entry.house, entry.work, entry.task, entry.kind,
        entry.time, entry.done, entry.note);
}

} // namespace

Result<void> checkEntry(const TimeEntry& entry, Date today) {
    if (entry.date.ok() && entry.date > today)
        return badInput("The time is dated " + isoDate(entry.date) + ", which is yet to come.");
    return checkEntry(entry);
}

Result<void> checkEntry(const TimeEntry& entry) {
    if (!entry.date.ok())
        return badInput("The time has no date.");
    if (!entry.person)
        return badInput("The time of " + isoDate(entry.date) + " says nobody's name.");
    if (entry.time <= Hours())
        return badInput("The time of " + isoDate(entry.date) + " must be more than no hours.");
    if (entry.time > wholeDay) {
        return badInput(formatHours(entry.time) + " hours do not fit into one day, "
            + isoDate(entry.date) + ".");
    }
    if (entry.done < Quantity())
        return badInput(
            "Fewer than none cannot have been finished on " + isoDate(entry.date) + ".");
    return {};
}

std::vector<Doubt> doubtsAbout(const std::vector<TimeEntry>& entries, const PersonNames& names) {
    std::vector<Doubt> doubts;
    std::map<std::pair<Date, Id<CrewMember>>, Hours> days;
    std::map<decltype(sameThing(TimeEntry())), int> seen;
    for (const TimeEntry& entry : entries) {
        const std::string who = capitalised(nameOf(entry.person, names));
        Hours& day = days[{entry.date, entry.person}];
        const bool wasLong = day > longDay;
        day += entry.time;
        if (day > longDay && !wasLong) {
            doubts.push_back({entry.id,
                who + " has more than " + formatHours(longDay, 0) + " hours on "
                    + isoDate(entry.date) + "."});
        }
        if (++seen[sameThing(entry)] == 2) {
            doubts.push_back({entry.id,
                who + " has the same " + formatHours(entry.time) + " hours twice on "
                    + isoDate(entry.date) + "."});
        }
    }
    return doubts;
}

} // namespace miterbook
