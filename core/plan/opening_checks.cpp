// SPDX-License-Identifier: GPL-3.0-or-later
#include "plan/check_words.h"

#include <cmath>
#include <numbers>

namespace miterbook {

namespace {

constexpr int mostAlike = 500;
constexpr Length thickestWall = Length::feet(3);

void checkShape(RowCheck& check, const Opening& opening, Missing missing) {
    if (opening.shape != Shape::arch)
        return;
    check.length("rise", opening.rise, longestOpening, missing);
    check.must(opening.width <= Length() || opening.rise * 2 <= opening.width,
        "is an arch that rises more than half its width");
}

void checkTrim(RowCheck& check, const Opening& opening) {
    check.number("count", opening.count, 1, mostAlike);
    check.number("sides cased", opening.sidesCased, 0, 2);
    check.number("mulls", opening.mulls, 0, 20);
    check.number("wall", opening.wall, 0, 1000);
    check.length("distance along its wall", opening.along);
    check.length("reveal", opening.reveal, Length::inches(3));
    check.must(opening.mulls == 0 || opening.width > Length() || opening.shape == Shape::polygon,
        "has mulls but no width to part");
}

void checkDepths(RowCheck& check, const Opening& opening) {
    check.length("wall thickness", opening.wallThickness, thickestWall);
    check.length("frame depth", opening.frameDepth, thickestWall);
    check.length("flooring", opening.flooring, Length::inches(6));
}

std::string openingName(const Opening& opening) {
    return namedOr(opening.mark, word(opening.kind));
}

} // namespace

Result<void> checkOpening(const Opening& opening, Missing missing) {
    RowCheck check(openingName(opening));
    const bool polygon = opening.shape == Shape::polygon;
    const Missing size = polygon ? Missing::allowed : missing;
    check.length("width", opening.width, longestOpening, size);
    check.length("height", opening.height, longestOpening, size);
    checkShape(check, opening, missing);
    checkTrim(check, opening);
    checkDepths(check, opening);
    if (const auto result = check.result(); !result)
        return result;
    if (polygon && (missing == Missing::refused || !opening.sides.empty()))
        return checkPolygon(opening.sides, openingName(opening));
    return {};
}

Result<void> checkPolygon(const std::vector<PolygonSide>& sides, const std::string& name) {
    RowCheck check(name);
    check.must(sides.size() >= 3, "needs at least three sides");
    std::int64_t angles = 0;
    double heading = 0;
    double x = 0;
    double y = 0;
    for (const PolygonSide& side : sides) {
        check.length("side", side.length, longestOpening);
        check.must(side.length > Length(), "has a side without a length");
        check.must(side.angle > Angle() && side.angle < Angle::degrees(360),
            "has a corner that is not between 0 and 360 degrees");
        x += side.length.toInches() * std::cos(heading);
        y += side.length.toInches() * std::sin(heading);
        heading += (180.0 - side.angle.toDegrees()) * std::numbers::pi / 180.0;
        angles += side.angle.hundredths();
    }
    const auto corners = std::ssize(sides);
    const std::int64_t wanted = (corners - 2) * 18'000;
    // Angles are kept to the hundredth: each may be half of one off.
    check.must(std::abs(angles - wanted) <= corners,
        "has corners that add up to " + std::to_string(angles / 100) + " degrees; "
            + std::to_string(corners) + " corners make " + std::to_string(wanted / 100));
    const Length gap = Length::fromInches(std::hypot(x, y));
    check.must(gap <= polygonTolerance,
        "has sides that do not meet: they miss by " + formatLengthWithUnit(gap));
    return check.result();
}

Result<void> checkMark(const Opening& opening, const PlanRows& rows) {
    if (opening.mark.empty() || opening.removed)
        return {};
    for (const auto& [id, other] : rows.of<Opening>()) {
        const bool same = id != opening.id && other.mark == opening.mark && !other.removed
            && other.variant == opening.variant;
        if (same)
            return badInput("Another opening is marked " + opening.mark + " already.");
    }
    return {};
}

Result<void> checkOpeningWall(const Opening& opening, const PlanRows& rows) {
    const Room* room = rows.of<Room>().find(opening.room);
    if (!room || opening.wall == 0)
        return {};
    RowCheck check(openingName(opening));
    check.must(opening.wall > 0 && opening.wall <= std::ssize(room->walls),
        "is said to stand in wall " + std::to_string(opening.wall) + " of "
            + namedOr(room->name, "room") + ", which has " + std::to_string(room->walls.size()));
    if (check.result().ok())
        check.must(opening.along <= room->walls[static_cast<std::size_t>(opening.wall) - 1].length,
            "is said to stand past the end of its wall");
    return check.result();
}

} // namespace miterbook
