// SPDX-License-Identifier: GPL-3.0-or-later
#include "bill/reminder.h"

#include <algorithm>

namespace miterbook {

std::string_view cautionFor(ReminderKind kind) {
    switch (kind) {
    case ReminderKind::lienDate:
        return "Lien rights and their dates differ by state and contract: ask counsel.";
    case ReminderKind::waiver:
        return "Forms of waivers differ by state: have counsel look at what you sign.";
    case ReminderKind::insurance:
    case ReminderKind::licence:
    case ReminderKind::other:
        break;
    }
    return {};
}

std::vector<Reminder> dueReminders(std::vector<Reminder> reminders, Date today, int ahead) {
    const Date last = addDays(today, ahead);
    std::erase_if(reminders, [&](const Reminder& reminder) {
        return reminder.done != noDate || !reminder.due.ok() || reminder.due > last;
    });
    std::ranges::stable_sort(reminders, {}, &Reminder::due);
    return reminders;
}

} // namespace miterbook
