// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "plan/place.h"
#include "stages/plan/variant_rows.h"

#include <optional>

namespace miterbook {

/// A room, opening, counted work or stair on the drawing, by the key that its table knows it by.
struct DrawnItem {
    enum class Kind { room, opening, work, stair };
    Kind kind = Kind::room;
    std::int64_t key = 0;

    auto operator<=>(const DrawnItem&) const = default;
};

/// Where on the plan a row of its own stands: the marks of counted work, a stair's walking line.
inline std::vector<PlanPoint>& pointsOf(OtherWork& work) {
    return work.marks;
}
inline std::vector<PlanPoint>& pointsOf(Stair& stair) {
    return stair.walkLine;
}

/// What is drawn of one level for a target: the rows shown there, those that the target takes away
/// left out unless asked for.
class DrawnLevel {
public:
    DrawnLevel(const Book& book, const EditTarget& target, Id<Level> level);

    const Book& book() const { return *m_book; }
    const EditTarget& target() const { return m_target; }
    Id<Level> level() const { return m_level; }
    const PlanRows& sheet() const { return m_book->sheet(m_target.plan); }

    /// On the level, in position order; removed rows among them.
    const std::vector<Room>& rooms() const { return m_rooms; }
    const std::vector<Opening>& openings() const { return m_openings; }
    const std::vector<OtherWork>& works() const { return m_works; }
    const std::vector<Stair>& stairs() const { return m_stairs; }
    /// That come up to the level from the one below.
    std::vector<Stair> stairsFromBelow() const;

    /// By key; nullptr when it is not there or taken away.
    const Room* room(std::int64_t key) const;
    const Opening* opening(std::int64_t key) const;
    const OtherWork* work(std::int64_t key) const;
    const Stair* stair(std::int64_t key) const;

    /// The drawn room at a point, the smallest where several are.
    const Room* roomAt(PlanPoint point) const;
    /// The drawn room whose wall is nearest to a point within `reach`, and the place in it.
    struct Hit {
        const Room* room = nullptr;
        WallPlace place;
    };
    std::optional<Hit> wallAt(PlanPoint point, Length reach) const;
    /// The room across the wall from a place; nullptr for an outside wall.
    const Room* behind(const Room& room, const WallPlace& place, Length* thickness = nullptr) const;

    /// Outlines of the drawn rooms, but those of these keys.
    std::vector<const Outline*> outlines(const std::vector<std::int64_t>& but = {}) const;

private:
    const Book* m_book;
    EditTarget m_target;
    Id<Level> m_level;
    std::vector<Room> m_rooms;
    std::vector<Opening> m_openings;
    std::vector<OtherWork> m_works;
    std::vector<Stair> m_stairs;
};

} // namespace miterbook
