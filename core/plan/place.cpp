// SPDX-License-Identifier: GPL-3.0-or-later
#include "plan/place.h"

#include <cmath>
#include <numbers>

namespace miterbook {

namespace {

/// A wall as a line: where it begins, its direction and length, in inches.
struct WallLine {
    double x = 0;
    double y = 0;
    double dx = 0;
    double dy = 0;
    double length = 0;

    WallLine(const Outline& outline, std::size_t wall) {
        const PlanPoint a = outline[wall];
        const PlanPoint b = outline[wall + 1 == outline.size() ? 0 : wall + 1];
        x = a.x.toInches();
        y = a.y.toInches();
        length = std::hypot((b - a).x.toInches(), (b - a).y.toInches());
        dx = length > 0 ? (b - a).x.toInches() / length : 0;
        dy = length > 0 ? (b - a).y.toInches() / length : 0;
    }
    double along(PlanPoint p) const {
        return (p.x.toInches() - x) * dx + (p.y.toInches() - y) * dy;
    }
    /// To the left of the wall's direction, which is out of the room.
    double off(PlanPoint p) const { return (p.x.toInches() - x) * dy - (p.y.toInches() - y) * dx; }
};

} // namespace

PlanPoint pointOn(const Outline& outline, std::size_t wall, Length along) {
    const WallLine line(outline, wall);
    const PlanPoint start = outline[wall];
    const auto nm = static_cast<double>(along.nm());
    return start
        + PlanPoint{Length::nanometres(std::llround(nm * line.dx)),
            Length::nanometres(std::llround(nm * line.dy))};
}

std::optional<WallPlace> nearestWall(const Outline& outline, PlanPoint point) {
    std::optional<WallPlace> nearest;
    double least = 0;
    for (std::size_t i = 0; i < outline.size(); ++i) {
        const WallLine line(outline, i);
        const double along = std::clamp(line.along(point), 0.0, line.length);
        const double away = std::hypot(line.along(point) - along, line.off(point));
        if (nearest && away >= least)
            continue;
        least = away;
        nearest = WallPlace{i, Length::fromInches(along), Length::fromInches(line.off(point))};
    }
    return nearest;
}

std::optional<WallPlace> across(const Outline& own, const WallPlace& place, const Outline& other) {
    constexpr double parallel = -0.99985; // a degree
    const WallLine line(own, place.wall);
    const PlanPoint point = pointOn(own, place.wall, place.along);
    std::optional<WallPlace> found;
    for (std::size_t i = 0; i < other.size(); ++i) {
        const WallLine facing(other, i);
        const double along = facing.along(point);
        // The point lies outside of the other room by the thickness of the wall.
        const double off = facing.off(point);
        const bool faces = line.dx * facing.dx + line.dy * facing.dy < parallel;
        if (!faces || along <= 0 || along >= facing.length || off < -0.5
            || off > thickestBetween.toInches())
            continue;
        if (!found || Length::fromInches(off) < found->off)
            found = WallPlace{i, Length::fromInches(along), Length::fromInches(off)};
    }
    return found;
}

std::optional<WallPlace> placeIn(const Room& room, const Opening& opening) {
    const auto wall = static_cast<std::size_t>(opening.wall);
    if (opening.wall <= 0 || wall > room.walls.size() || opening.along <= Length())
        return std::nullopt;
    return WallPlace{wall - 1, opening.along, {}};
}

std::optional<WallPlace> placeInOther(
    const Room& room, const Room& otherRoom, const Opening& opening) {
    const auto own = placeIn(room, opening);
    if (!own || room.outline.size() != room.walls.size() || room.level != otherRoom.level)
        return std::nullopt;
    return across(room.outline, *own, otherRoom.outline);
}

} // namespace miterbook
