// SPDX-License-Identifier: GPL-3.0-or-later
#include "takeoff/forgotten_rooms.h"

#include <algorithm>
#include <unordered_set>

namespace miterbook {

namespace {

using RoomIds = std::unordered_set<Id<Room>>;

template <class Row>
RoomIds roomsOf(const std::vector<Row>& rows) {
    RoomIds ids;
    for (const Row& row : rows)
        ids.insert(row.room);
    return ids;
}

RoomIds roomsWithDoors(const std::vector<Opening>& openings) {
    RoomIds ids;
    for (const Opening& opening : openings) {
        if (opening.isWindow())
            continue;
        ids.insert(opening.room);
        ids.insert(opening.otherRoom);
    }
    return ids;
}

/// Looks at the rooms of one plan.
class RoomLook {
public:
    explicit RoomLook(Tally& tally)
        : m_tally(tally)
        , m_shelved(roomsOf(tally.plan().closets))
        , m_stairs(roomsOf(tally.plan().stairs))
        , m_doors(roomsWithDoors(tally.plan().openings)) {}

    void look(const Room& room) {
        m_source = m_tally.sourceOf(room);
        const bool store = room.use == RoomUse::closet || room.use == RoomUse::pantry;
        if (store && !m_shelved.contains(room.id))
            say(" has no shelving.");
        if (room.use == RoomUse::stair && !m_stairs.contains(room.id))
            say(" has no stair.");
        if (room.walls.empty()) {
            if (room.baseChoice != RunChoice::none || room.crownChoice != RunChoice::none)
                say(" has no walls: no base or crown is counted for it.");
            return;
        }
        if (!m_doors.contains(room.id) && isClosed(room))
            say(" has no door or opening into it; its base is not shortened.");
        if (room.use == RoomUse::kitchen && !isBroken(room))
            say(" is a kitchen with base all round: no wall is taken off for cabinets.");
    }

private:
    /// Base all round: nothing says that the room is open to another.
    static bool isClosed(const Room& room) {
        return std::ranges::all_of(
            room.walls, [](const Wall& wall) { return wall.base && wall.corner != Corner::open; });
    }

    static bool isBroken(const Room& room) {
        return room.baseChoice == RunChoice::none || room.baseBreak > Length()
            || !room.breaks.empty()
            || std::ranges::any_of(room.walls, [](const Wall& wall) { return !wall.base; });
    }

    void say(const std::string& sentence) { m_tally.warn(m_source, m_source.name + sentence); }

    Tally& m_tally;
    Source m_source;
    RoomIds m_shelved;
    RoomIds m_stairs;
    RoomIds m_doors;
};

} // namespace

void lookAtRooms(Tally& tally) {
    RoomLook look(tally);
    for (const Room& room : tally.plan().rooms)
        look.look(room);
}

void lookAtClosets(Tally& tally) {
    for (const Closet& closet : tally.plan().closets) {
        const Profile* shelf = closet.shelf ? tally.stock(closet.shelf).profile : nullptr;
        if (!shelf || closet.depth <= shelf->width)
            continue;
        const Source source = tally.sourceOf(closet);
        tally.warn(source,
            source.name + " has shelves " + tally.text(closet.depth) + " deep, wider than "
                + shelf->name + " (" + tally.text(shelf->width) + "): rip them from sheet goods.");
    }
}

void lookAtLevels(Tally& tally) {
    const WholePlan& plan = tally.plan();
    std::unordered_set<Id<Level>> used;
    for (const Room& room : plan.rooms)
        used.insert(room.level);
    for (const Opening& opening : plan.openings)
        used.insert(tally.sourceOf(opening).level);
    for (const Level& level : plan.levels) {
        if (!used.contains(level.id))
            tally.warn(tally.sourceOfPlan(), level.name + " has no rooms and no openings.");
    }
    if (plan.stairs.empty() && std::ranges::any_of(plan.levels, &Level::upper))
        tally.warn(tally.sourceOfPlan(), "The plan has an upper level and no stair.");
}

} // namespace miterbook
