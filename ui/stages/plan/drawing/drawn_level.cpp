// SPDX-License-Identifier: GPL-3.0-or-later
#include "stages/plan/drawing/drawn_level.h"

#include <algorithm>

namespace miterbook {

namespace {

template <class Row>
const Row* byKey(const std::vector<Row>& rows, std::int64_t key) {
    const auto it = std::ranges::find_if(
        rows, [&](const Row& row) { return rowKey(row) == key && !row.removed; });
    return it == rows.end() ? nullptr : &*it;
}

bool isDrawn(const Room& room) {
    return !room.outline.empty() && !room.removed;
}

} // namespace

DrawnLevel::DrawnLevel(const Book& book, const EditTarget& target, Id<Level> level)
    : m_book(&book)
    , m_target(target)
    , m_level(level)
    , m_rooms(shownRows(sheet().of<Room>(), target.variant))
    , m_openings(shownRows(sheet().of<Opening>(), target.variant))
    , m_works(shownRows(sheet().of<OtherWork>(), target.variant))
    , m_stairs(shownRows(sheet().of<Stair>(), target.variant)) {
    std::erase_if(m_rooms, [&](const Room& room) { return room.level != level; });
    std::erase_if(m_openings, [&](const Opening& opening) {
        const auto in = std::ranges::find(m_rooms, opening.room.value(), rowKey<Room>);
        return opening.level != level && in == m_rooms.end();
    });
    std::erase_if(m_works, [&](const OtherWork& work) { return work.level != level; });
    std::erase_if(m_stairs, [&](const Stair& stair) { return stair.level != level; });
}

const Room* DrawnLevel::room(std::int64_t key) const {
    return byKey(m_rooms, key);
}

const Opening* DrawnLevel::opening(std::int64_t key) const {
    return byKey(m_openings, key);
}

const OtherWork* DrawnLevel::work(std::int64_t key) const {
    return byKey(m_works, key);
}

const Stair* DrawnLevel::stair(std::int64_t key) const {
    return byKey(m_stairs, key);
}

std::vector<Stair> DrawnLevel::stairsFromBelow() const {
    const std::vector<Level> levels = shownRows(sheet().of<Level>(), m_target.variant);
    const auto here = std::ranges::find(levels, m_level.value(), rowKey<Level>);
    if (here == levels.begin() || here == levels.end())
        return {};
    const std::int64_t below = rowKey(*std::prev(here));
    std::vector<Stair> stairs = shownRows(sheet().of<Stair>(), m_target.variant);
    std::erase_if(
        stairs, [&](const Stair& stair) { return stair.level.value() != below || stair.removed; });
    return stairs;
}

const Room* DrawnLevel::roomAt(PlanPoint point) const {
    const Room* found = nullptr;
    for (const Room& room : m_rooms) {
        if (isDrawn(room) && encloses(room.outline, point)
            && (!found || areaOf(room.outline) < areaOf(found->outline)))
            found = &room;
    }
    return found;
}

std::optional<DrawnLevel::Hit> DrawnLevel::wallAt(PlanPoint point, Length reach) const {
    std::optional<Hit> found;
    Length least = reach;
    for (const Room& room : m_rooms) {
        const auto place = isDrawn(room) ? nearestWall(room.outline, point) : std::nullopt;
        if (!place)
            continue;
        const Length away = distance(pointOn(room.outline, place->wall, place->along), point);
        // The room that the point lies in has its own wall nearer than the one behind it.
        if (away <= least && (!found || away < least || place->off < Length())) {
            found = Hit{&room, *place};
            least = away;
        }
    }
    return found;
}

const Room* DrawnLevel::behind(const Room& room, const WallPlace& place, Length* thickness) const {
    const Room* found = nullptr;
    Length least;
    for (const Room& other : m_rooms) {
        if (!isDrawn(other) || rowKey(other) == rowKey(room))
            continue;
        const auto there = across(room.outline, place, other.outline);
        if (there && (!found || there->off < least)) {
            found = &other;
            least = there->off;
        }
    }
    if (found && thickness)
        *thickness = least;
    return found;
}

std::vector<const Outline*> DrawnLevel::outlines(const std::vector<std::int64_t>& but) const {
    std::vector<const Outline*> outlines;
    for (const Room& room : m_rooms) {
        if (isDrawn(room) && std::ranges::count(but, rowKey(room)) == 0)
            outlines.push_back(&room.outline);
    }
    return outlines;
}

} // namespace miterbook
