// SPDX-License-Identifier: GPL-3.0-or-later
#include "plan/outline.h"

#include "plan/check_words.h"
#include "plan/outline_math.h"

#include <cmath>
#include <numbers>

namespace miterbook {

namespace {

constexpr double degreesInTurn = 360.0;

std::size_t after(const Outline& outline, std::size_t i) {
    return i + 1 == outline.size() ? 0 : i + 1;
}

Wide doubledArea(const Outline& outline) {
    Wide sum = 0;
    for (std::size_t i = 0; i < outline.size(); ++i) {
        const PlanPoint& a = outline[i];
        const PlanPoint& b = outline[after(outline, i)];
        sum += Wide(a.x.nm()) * b.y.nm() - Wide(b.x.nm()) * a.y.nm();
    }
    return sum;
}

double degreesBetween(PlanPoint from, PlanPoint to) {
    const double x = static_cast<double>((to.x - from.x).nm());
    const double y = static_cast<double>((to.y - from.y).nm());
    return std::atan2(y, x) * 180.0 / std::numbers::pi;
}

/// How far the way turns to the right at a corner: -180 to 180 degrees.
double turnAt(const Outline& outline, std::size_t corner) {
    const std::size_t before = corner == 0 ? outline.size() - 1 : corner - 1;
    const PlanPoint at = outline[corner];
    const double turn = degreesBetween(at, outline[after(outline, corner)])
        - degreesBetween(outline[before], at);
    return std::remainder(turn, degreesInTurn);
}

Result<void> checkCorners(const Outline& outline, const std::string& name) {
    RowCheck check(name);
    check.must(outline.size() >= 3, "needs at least three corners");
    check.must(
        outline.size() <= mostCorners, "has more than " + std::to_string(mostCorners) + " corners");
    check.must(
        std::ranges::all_of(outline, isNearZero), "has a corner over 300 ft from the plan's zero");
    return check.result();
}

/// Corners one after the other: a wall has a length and turns at its end.
Result<void> checkTurns(const Outline& outline, const std::string& name) {
    RowCheck check(name);
    for (std::size_t i = 0; i < outline.size(); ++i)
        check.must(outline[i] != outline[after(outline, i)],
            "has two corners in one place (" + std::to_string(after(outline, i) + 1) + ")");
    for (std::size_t i = 0; i < outline.size(); ++i) {
        const PlanPoint a = outline[i];
        const PlanPoint b = outline[after(outline, i)];
        const PlanPoint c = outline[after(outline, after(outline, i))];
        const std::string corner = std::to_string(after(outline, i) + 1);
        if (sideOf(a, b, c) == 0)
            check.must(false,
                dot(a, b, c) < 0 ? "doubles back at corner " + corner
                                 : "does not turn at corner " + corner);
    }
    return check.result();
}

} // namespace

bool isNearZero(const PlanPoint& point) {
    return std::max({point.x, -point.x, point.y, -point.y}) <= farthestPoint;
}

Length distance(PlanPoint a, PlanPoint b) {
    const PlanPoint way = b - a;
    if (way.x == Length() || way.y == Length())
        return std::max({way.x, -way.x, way.y, -way.y});
    return Length::nanometres(std::llround(
        std::hypot(static_cast<long double>(way.x.nm()), static_cast<long double>(way.y.nm()))));
}

Length pathLength(const std::vector<PlanPoint>& points) {
    Length sum;
    for (std::size_t i = 1; i < points.size(); ++i)
        sum += distance(points[i - 1], points[i]);
    return sum;
}

Quantity areaOf(const Outline& outline) {
    const Wide doubled = doubledArea(outline);
    const Wide foot = Wide(Length::nmPerInch) * 12;
    return Quantity::thousandths(
        roundedQuotient((doubled < 0 ? -doubled : doubled) * 500, foot * foot));
}

bool isClockwise(const Outline& outline) {
    return doubledArea(outline) > 0;
}

bool encloses(const Outline& outline, PlanPoint point) {
    bool inside = false;
    for (std::size_t i = 0; i < outline.size(); ++i) {
        const PlanPoint a = outline[i];
        const PlanPoint b = outline[after(outline, i)];
        const int side = sideOf(a, b, point);
        if (side == 0 && between(a, b, point))
            return true;
        if ((a.y > point.y) != (b.y > point.y) && (side > 0) == (b.y > a.y))
            inside = !inside;
    }
    return inside;
}

Result<void> checkOutline(const Outline& outline, const std::string& name) {
    if (auto corners = checkCorners(outline, name); !corners)
        return corners;
    if (auto turns = checkTurns(outline, name); !turns)
        return turns;
    const std::size_t count = outline.size();
    for (std::size_t i = 0; i < count; ++i) {
        for (std::size_t j = i + 2; j < count; ++j) {
            const bool neighbours = i == 0 && j + 1 == count;
            if (!neighbours
                && meet(outline[i], outline[i + 1], outline[j], outline[after(outline, j)]))
                return badInput(name + " crosses itself: wall " + std::to_string(i + 1)
                    + " meets wall " + std::to_string(j + 1) + ".");
        }
    }
    return {};
}

std::optional<Outline> insetBy(const Outline& outline, Length by) {
    const auto wayFrom = [&](std::size_t i) {
        const PlanPoint way = outline[after(outline, i)] - outline[i];
        const double length = std::hypot(way.x.toInches(), way.y.toInches());
        return std::pair(way.x.toInches() / length, way.y.toInches() / length);
    };
    Outline inner;
    for (std::size_t i = 0; i < outline.size(); ++i) {
        const auto [ax, ay] = wayFrom(i == 0 ? outline.size() - 1 : i - 1);
        const auto [bx, bz] = wayFrom(i);
        // The room is on the right of its walls: (-y, x) of a way leads in.
        const double both = 1 + ax * bx + ay * bz;
        const double part = by.toInches() / both;
        inner.push_back(outline[i]
            + PlanPoint{
                Length::fromInches(-(ay + bz) * part), Length::fromInches((ax + bx) * part)});
    }
    for (std::size_t i = 0; i < outline.size(); ++i) { // no wall may have turned round
        const PlanPoint was = outline[after(outline, i)] - outline[i];
        const PlanPoint is = inner[after(inner, i)] - inner[i];
        const double along = was.x.toInches() * is.x.toInches()
            + was.y.toInches() * is.y.toInches();
        if (along <= 0 || !encloses(outline, inner[i]))
            return std::nullopt;
    }
    return checkOutline(inner, "inner") ? std::optional(std::move(inner)) : std::nullopt;
}

Outline tidied(Outline outline) {
    const auto isCorner = [&](std::size_t i) {
        const std::size_t before = i == 0 ? outline.size() - 1 : i - 1;
        const PlanPoint next = outline[after(outline, i)];
        return outline[before] != outline[i]
            && (sideOf(outline[before], outline[i], next) != 0
                || dot(outline[before], outline[i], next) < 0);
    };
    for (std::size_t i = 0; i < outline.size() && outline.size() > 2;) {
        if (isCorner(i)) {
            ++i;
        } else {
            outline.erase(outline.begin() + static_cast<std::ptrdiff_t>(i));
            i = i == 0 ? 0 : i - 1; // the corner before may have become none
        }
    }
    if (!isClockwise(outline))
        std::reverse(outline.begin(), outline.end());
    return outline;
}

std::vector<Wall> wallsOf(const Outline& outline, const std::vector<Wall>& like) {
    std::vector<Wall> walls(outline.size());
    for (std::size_t i = 0; i < walls.size(); ++i) {
        Wall& wall = walls[i];
        if (like.size() == walls.size())
            wall = like[i];
        wall.length = distance(outline[i], outline[after(outline, i)]);
        const double turn = turnAt(outline, after(outline, i));
        wall.corner = turn < 0 ? Corner::outside : Corner::inside;
        wall.angle = Angle::hundredths(std::llround((180.0 - std::abs(turn)) * 100));
        // A corner so blunt or sharp that it rounds to none still is one.
        wall.angle = std::clamp(wall.angle, Angle::hundredths(1), Angle::hundredths(17'999));
    }
    return walls;
}

bool agree(const std::vector<Wall>& walls, const Outline& outline) {
    return walls == wallsOf(outline, walls);
}

double headingOf(const Outline& outline, std::size_t wall) {
    return degreesBetween(outline[wall], outline[after(outline, wall)]);
}

std::optional<Outline> layOut(
    const std::vector<Wall>& walls, PlanPoint start, double heading, Length tolerance) {
    if (walls.size() < 3)
        return std::nullopt;
    Outline outline;
    PlanPoint at = start;
    for (const Wall& wall : walls) {
        if (wall.corner == Corner::open)
            return std::nullopt;
        outline.push_back(at);
        at = at + wayAlong(heading, wall.length);
        const double turn = 180.0 - wall.angle.toDegrees();
        heading += wall.corner == Corner::outside ? -turn : turn;
    }
    if (distance(at, start) > tolerance || !checkOutline(outline, "The room").ok()
        || !isClockwise(outline))
        return std::nullopt;
    return outline;
}

Result<void> setOutline(Room& room, Outline outline) {
    outline = tidied(std::move(outline));
    if (auto ok = checkOutline(outline, namedOr(room.name, "room")); !ok)
        return ok;
    room.walls = wallsOf(outline, room.walls);
    room.outline = std::move(outline);
    return {};
}

Result<void> setWalls(Room& room, std::vector<Wall> walls) {
    if (room.outline.empty()) {
        room.walls = std::move(walls);
        return {};
    }
    // Typed walls are rounded to what is shown; walls that only look rounded are as they were.
    const std::vector<Wall> now = wallsOf(room.outline, walls);
    const auto same = [](const Wall& a, const Wall& b) {
        const Length off = a.length - b.length;
        return std::max(off, -off) <= Length::thirtySeconds(1) && a.corner == b.corner
            && a.angle == b.angle;
    };
    if (std::ranges::equal(walls, now, same)) {
        room.walls = now;
        return {};
    }
    auto outline = layOut(walls, room.outline.front(), headingOf(room.outline, 0));
    if (!outline)
        return badInput("The walls of " + namedOr(room.name, "room")
            + " do not come round to where they began; a room drawn on the plan is closed.");
    room.walls = wallsOf(*outline, walls);
    room.outline = *std::move(outline);
    return {};
}

} // namespace miterbook
