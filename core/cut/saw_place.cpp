// SPDX-License-Identifier: GPL-3.0-or-later
#include "cut/saw_place.h"

#include "plan/outline.h"
#include "plan/place.h"

namespace miterbook {

namespace {

bool hasRoomForASaw(const Room& room) {
    return room.use != RoomUse::closet && room.use != RoomUse::pantry && room.use != RoomUse::bath
        && room.use != RoomUse::stair;
}

/// As far from the walls as the room lets it: a saw and who stands at it need 3 ft [cp].
Outline standingIn(const Room& room) {
    for (const int inches : {36, 24, 12}) {
        if (auto inner = insetBy(room.outline, Length::inches(inches)))
            return *std::move(inner);
    }
    return room.outline;
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
        for (const PlanPoint& corner : standingIn(room))
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
