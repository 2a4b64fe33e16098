// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "bill/payment.h"

namespace miterbook {

/// What a date to keep in mind is about. The program knows no deadline of any law: days are the
/// user's own.
enum class ReminderKind { insurance, licence, waiver, lienDate, other };

template <>
struct Words<ReminderKind> {
    static constexpr std::array list{
        Word{ReminderKind::insurance, "insurance"},
        Word{ReminderKind::licence, "licence"},
        Word{ReminderKind::waiver, "waiver"},
        Word{ReminderKind::lienDate, "lien-right date"},
        Word{ReminderKind::other, "other"},
    };
};

/// A date to keep in mind.
struct Reminder {
    Id<Reminder> id;
    ReminderKind kind = ReminderKind::other;
    std::string title;
    Date due = noDate;
    Date done = noDate;
    Id<House> house;     ///< none: not about one house
    Id<Builder> builder; ///< none: not about one builder
    Id<Payment> payment; ///< the payment that a waiver goes with
    std::string note;

    bool operator==(const Reminder&) const = default;
};

template <>
struct Describe<Reminder> {
    static constexpr std::string_view table = "reminder";
    static constexpr std::string_view noun = "reminder";
    static constexpr void allFields(auto&& take) {
        take(field("id", &Reminder::id), field("kind", &Reminder::kind),
            field("title", &Reminder::title), field("due", &Reminder::due),
            field("done", &Reminder::done), field("house", &Reminder::house),
            field("builder", &Reminder::builder), field("payment", &Reminder::payment),
            field("note", &Reminder::note));
    }
};

/// What has to be said beside a kind of reminder; empty where there is nothing to be careful about.
std::string_view cautionFor(ReminderKind kind);

/// Reminders that are not done and due up to `ahead` days after `today`, by day.
std::vector<Reminder> dueReminders(std::vector<Reminder> reminders, Date today, int ahead);

} // namespace miterbook
