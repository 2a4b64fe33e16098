// SPDX-License-Identifier: GPL-3.0-or-later
#include "plan/redraw.h"

#include "plan/outline_math.h"

#include <algorithm>

namespace miterbook {

namespace {

/// Where the lines through a-b and c-d cross; b where they run alike.
PlanPoint crossing(PlanPoint a, PlanPoint b, PlanPoint c, PlanPoint d) {
    const double abx = (b - a).x.toInches();
    const double aby = (b - a).y.toInches();
    const double cdx = (d - c).x.toInches();
    const double cdy = (d - c).y.toInches();
    const double cross = abx * cdy - aby * cdx;
    if (std::abs(cross) < 1e-6 * std::hypot(abx, aby) * std::hypot(cdx, cdy))
        return b;
    const double t = ((c - a).x.toInches() * cdy - (c - a).y.toInches() * cdx) / cross;
    const PlanPoint at{a.x + Length::fromInches(t * abx), a.y + Length::fromInches(t * aby)};
    // A wall along an axis stays on it exactly.
    return {a.x == b.x ? a.x : c.x == d.x ? c.x : at.x, a.y == b.y ? a.y : c.y == d.y ? c.y : at.y};
}

/// The part of a move that is square to the way from a to b.
PlanPoint squareTo(PlanPoint a, PlanPoint b, PlanPoint by) {
    if (a.x == b.x)
        return {by.x, {}};
    if (a.y == b.y)
        return {{}, by.y};
    const double dx = (b - a).x.toInches();
    const double dy = (b - a).y.toInches();
    const double part = (by.x.toInches() * -dy + by.y.toInches() * dx) / (dx * dx + dy * dy);
    return {Length::fromInches(-dy * part), Length::fromInches(dx * part)};
}

/// From the wall's far corner instead of its first.
Length fromOtherEnd(Length along, const Room& room, int wall) {
    return room.walls[static_cast<std::size_t>(wall) - 1].length - along;
}

bool hasWall(const Room& room, int wall) {
    return wall > 0 && static_cast<std::size_t>(wall) <= room.walls.size();
}

} // namespace

Outline moved(Outline outline, PlanPoint by) {
    for (PlanPoint& corner : outline)
        corner = corner + by;
    return outline;
}

Outline wallMoved(Outline outline, std::size_t wall, PlanPoint by) {
    const std::size_t count = outline.size();
    if (count < 3)
        return outline;
    const std::size_t next = (wall + 1) % count;
    const PlanPoint a = outline[wall];
    const PlanPoint b = outline[next];
    const PlanPoint off = squareTo(a, b, by);
    const PlanPoint before = outline[(wall + count - 1) % count];
    const PlanPoint after = outline[(next + 1) % count];
    outline[wall] = crossing(before, a, a + off, b + off);
    outline[next] = crossing(after, b, a + off, b + off);
    return outline;
}

int mirroredWall(int wall, std::size_t count) {
    // Corners in reverse order from the first: wall 1 becomes the last.
    return static_cast<int>(count) - wall + 1;
}

Room mirrored(Room room, Length axis) {
    const Room before = room;
    for (PlanPoint& corner : room.outline)
        corner.x = axis + axis - corner.x;
    std::reverse(room.outline.begin(), room.outline.end());
    if (!room.outline.empty()) // the first corner stays the first
        std::rotate(room.outline.rbegin(), room.outline.rbegin() + 1, room.outline.rend());
    std::reverse(room.walls.begin(), room.walls.end());
    if (!room.outline.empty()) {
        room.walls = wallsOf(room.outline, room.walls);
    } else {
        // The corner after a wall is now the one that was before it.
        const std::size_t count = room.walls.size();
        for (std::size_t i = 0; i < count; ++i) {
            const Wall& from = before.walls[(2 * count - 2 - i) % count];
            room.walls[i].corner = from.corner;
            room.walls[i].angle = from.angle;
        }
    }
    for (BaseBreak& each : room.breaks) {
        if (!hasWall(before, each.wall))
            continue;
        each.from = std::max(fromOtherEnd(each.from + each.length, before, each.wall), Length());
        each.wall = mirroredWall(each.wall, before.walls.size());
    }
    return room;
}

Opening mirrored(Opening opening, const Room& before) {
    if (opening.hand != Hand::none)
        opening.hand = opening.hand == Hand::left ? Hand::right : Hand::left;
    if (!hasWall(before, opening.wall))
        return opening;
    if (opening.along > Length())
        opening.along = fromOtherEnd(opening.along, before, opening.wall);
    opening.wall = mirroredWall(opening.wall, before.walls.size());
    return opening;
}

Length keptWithin(Length along, Length width, Length wall) {
    const Length half = width / 2;
    if (width >= wall)
        return std::max(wall / 2, Length::nanometres(1));
    return std::clamp(along, half, wall - half);
}

Opening rehung(Opening opening, const Room& before, const Room& after) {
    const auto place = placeIn(before, opening);
    if (!place || before.outline.size() != before.walls.size() || after.outline.empty()) {
        if (!hasWall(after, opening.wall))
            opening.wall = 0;
        return opening;
    }
    if (before.walls.size() != after.walls.size()) {
        const PlanPoint was = pointOn(before.outline, place->wall, place->along);
        const auto now = nearestWall(after.outline, was);
        opening.wall = static_cast<int>(now->wall) + 1;
        opening.along = now->along;
    } else {
        // Where a wall was moved or made longer at its first corner, the opening stays where it is.
        const auto wall = place->wall;
        const double turned = std::abs(std::remainder(
            headingOf(before.outline, wall) - headingOf(after.outline, wall), 360.0));
        const PlanPoint off = after.outline[wall] - before.outline[wall];
        const PlanPoint farOff = after.outline[(wall + 1) % after.outline.size()]
            - before.outline[(wall + 1) % before.outline.size()];
        if (turned < 0.01 && off != farOff) {
            const PlanPoint was = pointOn(before.outline, wall, place->along);
            const PlanPoint first = after.outline[wall];
            const PlanPoint way = pointOn(after.outline, wall, Length::feet(10)) - first;
            const double part = ((was - first).x.toInches() * way.x.toInches()
                                    + (was - first).y.toInches() * way.y.toInches())
                / 120.0;
            opening.along = Length::fromInches(part);
        }
    }
    const Length wall = after.walls[static_cast<std::size_t>(opening.wall) - 1].length;
    opening.along = keptWithin(opening.along, opening.width, wall);
    return opening;
}

} // namespace miterbook
