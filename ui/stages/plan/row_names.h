// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/book.h"

#include <QString>
#include <QStringList>

namespace miterbook {

/// Rooms and levels as they are chosen in cells: by name, with the mark where names repeat.
/// `variant` adds what an elevation or option adds to the base plan.
class RoomNames {
public:
    RoomNames(const Book& book, Id<Plan> plan, Id<Variant> variant);

    /// Nothing first: no room.
    QStringList names() const;
    QString nameOf(Id<Room> id) const;
    /// By name or mark. Errors: a sentence.
    Result<Id<Room>> find(const QString& typed) const;

private:
    std::vector<const Room*> m_rooms;
    QStringList m_names; ///< in the order of m_rooms
};

class LevelNames {
public:
    LevelNames(const Book& book, Id<Plan> plan, Id<Variant> variant);

    QStringList names() const { return m_names; }
    QString nameOf(Id<Level> id) const;
    Result<Id<Level>> find(const QString& typed) const;

private:
    std::vector<const Level*> m_levels;
    QStringList m_names;
};

/// The level that a new row begins on: the plan's first; none when it has none.
Id<Level> firstLevel(const PlanRows& rows);

/// The next mark after those there are: `W` after W1..W3 gives W4, `10` after 101..104 gives 105.
std::string nextMark(const std::vector<std::string>& marks, const std::string& prefix);

} // namespace miterbook
