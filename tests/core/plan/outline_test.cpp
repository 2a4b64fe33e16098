// SPDX-License-Identifier: GPL-3.0-or-later
// Outlines against an independent computation: floating sums over triangles, and corner turns
// counted from the walls alone.
#include "plan/outline.h"

#include <gmock/gmock.h>

#include <cmath>
#include <random>

namespace miterbook {
namespace {

constexpr Length ft(std::int64_t feet) {
    return Length::feet(feet);
}

PlanPoint at(std::int64_t x, std::int64_t y) {
    return {ft(x), ft(y)};
}

std::string refusal(const Outline& outline) {
    const auto result = checkOutline(outline, "Den");
    return result ? "" : result.error().sentence;
}

/// A rectilinear room: a skyline over a straight base, its columns of random widths and heights.
Outline randomSkyline(std::mt19937& random) {
    const auto some = [&](int least, int most) {
        return Length::sixteenths(
            std::uniform_int_distribution<int>(least * 192, most * 192)(random));
    };
    const int columns = std::uniform_int_distribution<int>(1, 8)(random);
    Outline outline{{{}, {}}};
    Length x;
    for (int i = 0; i < columns; ++i) {
        const Length height = some(3, 20);
        outline.push_back({x, -height});
        x += some(2, 12);
        outline.push_back({x, -height});
    }
    outline.push_back({x, {}});
    return outline;
}

/// A star-shaped room: corners at growing angles about a middle, so that it cannot cross itself.
Outline randomStar(std::mt19937& random) {
    std::uniform_real_distribution<double> jitter(0.1, 0.9);
    std::uniform_real_distribution<double> radius(4.0, 25.0);
    const int corners = std::uniform_int_distribution<int>(3, 20)(random);
    Outline outline;
    for (int i = 0; i < corners; ++i) {
        const double angle = (i + jitter(random)) / corners * 2 * M_PI;
        const double r = radius(random) * 12;
        outline.push_back(
            {Length::fromInches(r * std::cos(angle)), Length::fromInches(r * std::sin(angle))});
    }
    return outline;
}

/// Square feet as a sum of triangles from the first corner, by Heron's formula with the sign of the
/// turn.
double areaByTriangles(const Outline& outline) {
    const auto side = [](PlanPoint a, PlanPoint b) {
        return std::hypot((a.x - b.x).toFeet(), (a.y - b.y).toFeet());
    };
    double sum = 0;
    for (std::size_t i = 1; i + 1 < outline.size(); ++i) {
        const PlanPoint o = outline[0];
        const PlanPoint p = outline[i];
        const PlanPoint q = outline[i + 1];
        const double a = side(o, p);
        const double b = side(p, q);
        const double c = side(q, o);
        const double s = (a + b + c) / 2;
        const double area = std::sqrt(std::max(0.0, s * (s - a) * (s - b) * (s - c)));
        const double turn = std::atan2((q.y - o.y).toFeet(), (q.x - o.x).toFeet())
            - std::atan2((p.y - o.y).toFeet(), (p.x - o.x).toFeet());
        sum += std::remainder(turn, 2 * M_PI) < 0 ? -area : area;
    }
    return std::abs(sum);
}

/// What the corners turn in all, degrees.
double turnsOf(const std::vector<Wall>& walls) {
    double sum = 0;
    for (const Wall& wall : walls) {
        const double turn = 180.0 - wall.angle.toDegrees();
        sum += wall.corner == Corner::outside ? -turn : turn;
    }
    return sum;
}

void expectSound(const Outline& outline, unsigned seed) {
    ASSERT_EQ(refusal(outline), "") << seed;
    ASSERT_TRUE(isClockwise(outline)) << seed;
    const std::vector<Wall> walls = wallsOf(outline);
    ASSERT_EQ(walls.size(), outline.size());
    EXPECT_NEAR(turnsOf(walls), 360.0, 0.005 * static_cast<double>(walls.size()) + 1e-9) << seed;
    EXPECT_NEAR(areaOf(outline).toDouble(), areaByTriangles(outline), 0.01) << seed;
    double around = 0;
    for (std::size_t i = 0; i < outline.size(); ++i) {
        const PlanPoint a = outline[i];
        const PlanPoint b = outline[(i + 1) % outline.size()];
        around += std::hypot((a.x - b.x).toInches(), (a.y - b.y).toInches());
    }
    Length sum;
    for (const Wall& wall : walls)
        sum += wall.length;
    EXPECT_NEAR(sum.toInches(), around, 1e-6) << seed;
}

TEST(Outline, RectilinearRoomsAgreeWithAnIndependentSum) {
    for (unsigned seed = 1; seed <= 400; ++seed) {
        std::mt19937 random(seed);
        const Outline outline = tidied(randomSkyline(random));
        expectSound(outline, seed);
        const auto walls = wallsOf(outline);
        for (const Wall& wall : walls)
            EXPECT_EQ(wall.angle, Angle::degrees(90));
        const auto outside = std::ranges::count(walls, Corner::outside, &Wall::corner);
        EXPECT_EQ(std::ssize(walls) - 2 * outside, 4) << seed; // inside corners are 4 more
        EXPECT_EQ(layOut(walls, outline[0], headingOf(outline, 0), Length()), outline) << seed;
    }
}

TEST(Outline, GeneralRoomsAgreeWithAnIndependentSum) {
    for (unsigned seed = 1; seed <= 400; ++seed) {
        std::mt19937 random(seed);
        const Outline outline = tidied(randomStar(random));
        if (checkOutline(outline, "Room").ok())
            expectSound(outline, seed);
    }
}

TEST(Outline, OfAnLKnowsItsOutsideCorner) {
    // 12 x 8 with a 4 x 4 bite out of a corner: 80 sq ft, 40 ft around [calc].
    const Outline outline{at(0, 0), at(12, 0), at(12, 4), at(8, 4), at(8, 8), at(0, 8)};
    EXPECT_EQ(areaOf(outline), Quantity::count(80));
    const auto walls = wallsOf(outline);
    EXPECT_EQ(walls[2].corner, Corner::outside);
    EXPECT_EQ(std::ranges::count(walls, Corner::inside, &Wall::corner), 5);
}

TEST(Outline, BayIsCutAt135) {
    const Outline bay{at(0, 0), at(10, 0), at(10, 8), at(7, 11), at(3, 11), at(0, 8)};
    EXPECT_EQ(wallsOf(bay)[1].angle, Angle::degrees(135));
    EXPECT_EQ(wallsOf(bay)[1].corner, Corner::inside);
}

TEST(Outline, RefusesWhatIsNoRoom) {
    EXPECT_EQ(refusal({at(0, 0), at(4, 0)}), "Den needs at least three corners.");
    EXPECT_EQ(
        refusal({at(0, 0), at(4, 0), at(4, 0), at(0, 4)}), "Den has two corners in one place (3).");
    EXPECT_EQ(refusal({at(0, 0), at(4, 0), at(8, 0), at(0, 4)}), "Den does not turn at corner 2.");
    EXPECT_EQ(refusal({at(0, 0), at(8, 0), at(4, 0), at(4, 4)}), "Den doubles back at corner 2.");
    EXPECT_EQ(refusal({at(0, 0), at(4, 4), at(4, 0), at(0, 4)}),
        "Den crosses itself: wall 1 meets wall 3.");
    EXPECT_EQ(refusal({at(0, 0), at(400, 0), at(4, 4)}),
        "Den has a corner over 300 ft from the plan's zero.");
    EXPECT_EQ(refusal(Outline(201)), "Den has more than 200 corners.");
    // A wall that only touches another one.
    EXPECT_EQ(refusal({at(0, 0), at(8, 0), at(8, 8), at(4, 0), at(0, 8)}),
        "Den crosses itself: wall 1 meets wall 3.");
}

TEST(Outline, CrossingIsFoundWhereverTwoWallsAreSwapped) {
    // Two neighbours swapped on a ring of many corners of one distance make a bow tie.
    for (int corners = 4; corners <= 24; ++corners) {
        for (int swap = 0; swap < corners; ++swap) {
            Outline ring;
            for (int i = 0; i < corners; ++i)
                ring.push_back({Length::fromInches(120 * std::cos(2 * M_PI * i / corners)),
                    Length::fromInches(120 * std::sin(2 * M_PI * i / corners))});
            ASSERT_EQ(refusal(ring), "") << corners;
            std::swap(ring[static_cast<std::size_t>(swap)],
                ring[static_cast<std::size_t>((swap + 1) % corners)]);
            EXPECT_THAT(refusal(ring), testing::HasSubstr("crosses itself")) << corners << swap;
        }
    }
}

TEST(Outline, IsTidiedClockwiseWithoutFlatCorners) {
    const Outline typed{at(0, 0), at(0, 8), at(6, 8), at(12, 8), at(12, 0)};
    const Outline tidy = tidied(typed);
    EXPECT_EQ(tidy.size(), 4U);
    EXPECT_TRUE(isClockwise(tidy));
}

TEST(Outline, EnclosesItsInsideAndEdge) {
    const Outline ell{at(0, 0), at(12, 0), at(12, 4), at(8, 4), at(8, 8), at(0, 8)};
    EXPECT_TRUE(encloses(ell, at(4, 6)));
    EXPECT_TRUE(encloses(ell, at(8, 6)));
    EXPECT_FALSE(encloses(ell, at(10, 6)));
    EXPECT_FALSE(encloses(ell, at(-1, 4)));
}

TEST(DrawnRoom, TakesItsWallsFromTheOutline) {
    Room room;
    room.name = "Den";
    ASSERT_TRUE(setOutline(room, {at(0, 0), at(12, 0), at(12, 10), at(0, 10)}).ok());
    EXPECT_EQ(room.walls.size(), 4U);
    EXPECT_EQ(room.walls[1].length, ft(10));
    room.walls[1].base = false;
    ASSERT_TRUE(setOutline(room, {at(0, 0), at(14, 0), at(14, 10), at(0, 10)}).ok());
    EXPECT_EQ(room.walls[0].length, ft(14));
    EXPECT_FALSE(room.walls[1].base); // walls keep what is said of them
    EXPECT_FALSE(setOutline(room, {at(0, 0), at(4, 4), at(4, 0), at(0, 4)}).ok());
    EXPECT_EQ(room.walls[0].length, ft(14));
}

TEST(DrawnRoom, IsDrawnAnewWhenItsWallsAreTyped) {
    Room room;
    room.name = "Den";
    ASSERT_TRUE(setOutline(room, {at(2, 3), at(14, 3), at(14, 13), at(2, 13)}).ok());
    std::vector<Wall> typed = room.walls;
    typed[0].length = typed[2].length = ft(15);
    ASSERT_TRUE(setWalls(room, typed).ok());
    EXPECT_EQ(room.outline, (Outline{at(2, 3), at(17, 3), at(17, 13), at(2, 13)}));
    typed[0].length = ft(9);
    const auto refused = setWalls(room, typed);
    ASSERT_FALSE(refused.ok());
    EXPECT_THAT(refused.error().sentence, testing::HasSubstr("do not come round"));
    EXPECT_EQ(room.outline.size(), 4U);
    Wall wall;
    wall.length = ft(3);
    room = {};
    EXPECT_TRUE(setWalls(room, {wall}).ok()); // not drawn: any walls
}

TEST(DrawnRoom, KeepsItsOutlineWhenOnlyRunsChange) {
    Room room;
    const PlanPoint odd{Length::nanometres(3'657'600'123), Length::nanometres(77)};
    ASSERT_TRUE(setOutline(room, {at(0, 0), odd, at(12, 10), at(0, 10)}).ok());
    const Outline before = room.outline;
    std::vector<Wall> typed = room.walls;
    typed[2].crown = false;
    for (Wall& wall : typed)
        wall.length = roundTo(wall.length, Length::sixteenths(1));
    ASSERT_TRUE(setWalls(room, typed).ok());
    EXPECT_EQ(room.outline, before);
    EXPECT_FALSE(room.walls[2].crown);
    EXPECT_TRUE(agree(room.walls, room.outline));
}

TEST(Inset, MovesEveryWallInward) {
    const Outline l{at(0, 0), at(20, 0), at(20, 10), at(10, 10), at(10, 20), at(0, 20)};
    const auto inner = insetBy(l, ft(2));
    ASSERT_TRUE(inner);
    EXPECT_EQ(*inner, (Outline{at(2, 2), at(18, 2), at(18, 8), at(8, 8), at(8, 18), at(2, 18)}));
    const auto triangle = insetBy({at(0, 0), at(30, 0), at(0, 40)}, ft(5));
    ASSERT_TRUE(triangle); // a 3-4-5 triangle has an inscribed circle of 10 ft: half is left
    EXPECT_EQ(areaOf(*triangle), Quantity::count(150));
}

TEST(Inset, IsNothingWhereTheRoomIsTooNarrow) {
    const Outline hall{at(0, 0), at(20, 0), at(20, 5), at(0, 5)};
    EXPECT_TRUE(insetBy(hall, ft(2)));
    EXPECT_FALSE(insetBy(hall, Length::inches(30)));
    EXPECT_FALSE(insetBy(hall, ft(4)));
}

} // namespace
} // namespace miterbook
