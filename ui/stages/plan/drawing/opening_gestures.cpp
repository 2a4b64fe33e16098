// SPDX-License-Identifier: GPL-3.0-or-later
#include "stages/plan/drawing/opening_gestures.h"

#include "plan/redraw.h"
#include "stages/plan/opening_specs.h"

namespace miterbook {

namespace {

Error noOpening() {
    return {Fault::notFound, "Choose a window or door first."};
}

/// The width that an opening takes of its wall, for keeping it within.
Length widthOf(const Opening& opening) {
    return std::max(opening.width, Length::inches(1));
}

/// Puts an opening into a wall, with the room behind and the wall's thickness as drawn.
void stand(Opening& opening, const DrawnLevel& level, const Room& room, const WallPlace& place) {
    opening.level = room.level;
    opening.room = Id<Room>(rowKey(room));
    opening.wall = static_cast<int>(place.wall) + 1;
    opening.along = keptWithin(place.along, widthOf(opening), room.walls[place.wall].length);
    opening.count = 1;
    if (opening.isWindow())
        return;
    Length thickness;
    const WallPlace kept{place.wall, opening.along, {}};
    const Room* behind = level.behind(room, kept, &thickness);
    opening.otherRoom = behind ? Id<Room>(rowKey(*behind)) : Id<Room>();
    if (behind && thickness > Length::inches(2))
        opening.wallThickness = thickness;
}

/// A kind of door comes with what is usual for it.
void becomes(Opening& opening, OpeningKind kind) {
    if (opening.kind == kind)
        return;
    opening.kind = kind;
    const bool latched = kind == OpeningKind::prehungDoor || kind == OpeningKind::pocketDoor
        || kind == OpeningKind::doubleDoor;
    opening.lockset = kind == OpeningKind::exteriorDoor ? Lockset::keyed
        : latched                                       ? Lockset::passage
                                                        : Lockset::none;
    opening.deadbolt = kind == OpeningKind::exteriorDoor;
    opening.sidesCased = kind == OpeningKind::exteriorDoor ? 1 : 2;
    opening.doorStop = opening.doorStop && latched;
}

template <class Fn>
Result<Edit> changed(
    const DrawnLevel& level, IdSource& ids, std::int64_t key, const std::string& what, Fn&& fn) {
    const Opening* before = level.opening(key);
    if (!before)
        return noOpening();
    Opening after = *before;
    if (Result<void> done = fn(after); !done)
        return done.error();
    EditBuilder edit(level.book(), what + " " + openingTitle(after));
    storeRow(edit, ids, level.target(), std::move(after));
    return edit.take();
}

} // namespace

Result<Edit> openingPlaced(const DrawnLevel& level, IdSource& ids, const OpeningChoice& choice,
    std::int64_t room, const WallPlace& place) {
    const Room* into = level.room(room);
    if (!into || place.wall >= into->walls.size())
        return badInput("A window or door needs a wall of a drawn room to stand in.");
    Opening opening;
    opening.plan = level.target().plan;
    opening.position = nextPosition(level.sheet().of<Opening>());
    beginOpening(opening, level.sheet(), choice.kind == OpeningKind::window, 0);
    becomes(opening, choice.kind);
    opening.width = choice.size.width;
    opening.height = choice.size.height;
    const bool outside = opening.isWindow() || choice.kind == OpeningKind::exteriorDoor;
    if (outside && choice.outsideWall > Length())
        opening.wallThickness = choice.outsideWall;
    stand(opening, level, *into, place);
    EditBuilder edit(level.book(), "Place " + openingTitle(opening));
    storeRow(edit, ids, level.target(), std::move(opening));
    return edit.take();
}

Result<Edit> openingMoved(const DrawnLevel& level, IdSource& ids, std::int64_t key,
    std::int64_t room, const WallPlace& place) {
    const Room* into = level.room(room);
    if (!into || place.wall >= into->walls.size())
        return badInput("A window or door needs a wall of a drawn room to stand in.");
    return changed(level, ids, key, "Move", [&](Opening& opening) -> Result<void> {
        if (opening.count > 1)
            return badInput(openingTitle(opening) + " stands for " + std::to_string(opening.count)
                + " alike; only one can have its place on the drawing.");
        stand(opening, level, *into, place);
        return {};
    });
}

Result<Edit> openingNudged(const DrawnLevel& level, IdSource& ids, std::int64_t key, Length by) {
    return changed(level, ids, key, "Move", [&](Opening& opening) -> Result<void> {
        const auto where = placeOf(level, opening);
        if (!where)
            return badInput(openingTitle(opening) + " has no place on the drawing yet.");
        opening.along = keptWithin(
            opening.along + by, widthOf(opening), where->room->walls[where->place.wall].length);
        return {};
    });
}

Result<Edit> openingResized(
    const DrawnLevel& level, IdSource& ids, std::int64_t key, const Size& size) {
    return changed(level, ids, key, "Resize", [&](Opening& opening) -> Result<void> {
        opening.width = size.width;
        opening.height = size.height;
        const auto where = placeOf(level, opening);
        if (where)
            opening.along = keptWithin(
                opening.along, size.width, where->room->walls[where->place.wall].length);
        return {};
    });
}

std::optional<PlacedOpening> placeOf(const DrawnLevel& level, const Opening& opening) {
    const Room* room = level.room(opening.room.value());
    if (!room || room->outline.empty())
        return std::nullopt;
    const auto place = placeIn(*room, opening);
    return place ? std::optional(PlacedOpening{room, *place}) : std::nullopt;
}

} // namespace miterbook
