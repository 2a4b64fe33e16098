// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/book.h"

#include <optional>
#include <string_view>

namespace miterbook {

/// Finds rows of an opened plan, and profiles, by the names that people write in schedules. Only
/// the plan's own rows are looked at, not those of its elevations and options. Case and blanks do
/// not matter.
class PlanNames {
public:
    PlanNames(const Book& book, Id<Plan> plan)
        : m_book(book)
        , m_rows(book.sheet(plan)) {}

    /// By name; nullptr when there is none, or more than one.
    const Level* level(std::string_view name) const;
    /// By number or name, or "101 Kitchen" as both together; nullptr when there is none, or more
    /// than one.
    const Room* room(std::string_view name) const;
    /// By name; else the only profile of that use whose name holds the text. nullptr when none.
    const Profile* profile(std::string_view name, ProfileUse use) const;
    /// The only profile of a use; none when the book has none or several.
    Id<Profile> onlyProfile(ProfileUse use) const;

    const PlanRows& rows() const { return m_rows; }

private:
    const Book& m_book;
    const PlanRows& m_rows;
};

} // namespace miterbook
