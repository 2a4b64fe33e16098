// SPDX-License-Identifier: GPL-3.0-or-later
#include "cut/saw_place.h"

#include "plan/place.h"

namespace miterbook {

namespace {

bool hasRoomForASaw(const Room& room) {
    return room.use != RoomUse::closet && room.use != RoomUse::pantry && room.use != RoomUse::bath
        && room.use != RoomUse::stair;
}

std::vector<Carry> carriesOn(const WholePlan& whole, Id<Level> level) {
    std::vector<Carry> carries;
    for (const Opening& opening : whole.openings) {
        const Room* room = whole.room(opening.room);
        if (!room || room->level != level || room->outline.empty() || opening.sidesCased == 0)
            continue;
        const auto place = placeIn(*room, opening);
        if (!place)
            continue;
        const PlanPoint at = pointOn(room->outline, place->wall, place->along);
        carries.push_back({{at.x, at.y}, opening.sidesCased});
    }
    return carries;
}

} // namespace

std::optional<SawPlace> sawPlaceOn(const WholePlan& whole, Id<Level> level) {
    const std::vector<Carry> carries = carriesOn(whole, level);
    std::optional<SawPlace> best;
    if (carries.empty())
        return best;
    for (const Room& room : whole.rooms) {
        if (room.level != level || room.outline.empty() || !hasRoomForASaw(room))
            continue;
        std::vector<Spot> corners;
        for (const PlanPoint& corner : room.outline)
            corners.push_back({corner.x, corner.y});
        const Spot spot = bestSpot(corners, carries);
        const Length walked = carryingDistance(spot, carries);
        if (!best || walked < best->walked)
            best = SawPlace{room.id, spot, walked};
    }
    return best;
}

std::optional<Length> walkedFrom(const WholePlan& whole, Id<Level> level, Spot spot) {
    const std::vector<Carry> carries = carriesOn(whole, level);
    if (carries.empty())
        return std::nullopt;
    return carryingDistance(spot, carries);
}

} // namespace miterbook
