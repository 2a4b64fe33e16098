// SPDX-License-Identifier: GPL-3.0-or-later
#include "trim_kit.h"

#include <cmath>

namespace miterbook {
namespace {

using namespace kit;
using testing::HasSubstr;

Opening polygon(std::initializer_list<std::pair<Length, int>> sides) {
    Opening opening = window({}, {});
    opening.shape = Shape::polygon;
    for (const auto& [length, degrees] : sides)
        opening.sides.push_back({length, Angle::degrees(degrees)});
    return opening;
}

// Octagon, side 24: SP 24.155330, LP 26.847718, saw 22.5 [calc: SP = s + r k, k = 2 cot 67.5].
TEST(Polygon, OctagonHasEightEqualSides) {
    Opening opening = window({}, {});
    opening.shape = Shape::polygon;
    opening.sides.assign(8, {in(24), Angle::degrees(135)});
    const Takeoff takeoff = takeOne(opening);
    ASSERT_EQ(takeoff.pieces.size(), 8U);
    for (const Piece& piece : takeoff.pieces) {
        EXPECT_NEAR(piece.shortPoint.toInches(), 24.155330, 1e-6);
        EXPECT_NEAR(piece.longPoint.toInches(), 26.847718, 1e-6);
        EXPECT_EQ(piece.left.cut, EndCut::miter);
        EXPECT_DOUBLE_EQ(piece.left.sawAngle, 22.5);
        EXPECT_DOUBLE_EQ(piece.right.sawAngle, 22.5);
    }
    EXPECT_EQ(amount(takeoff, Task::nonSquareCorner), 8000);
}

TEST(Polygon, RectangleAsPolygonIsTheSameFrame) {
    const Takeoff shaped = takeOne(
        polygon({{in(60), 90}, {in(36), 90}, {in(60), 90}, {in(36), 90}}));
    EXPECT_EQ(piece(shaped, "sill").longPoint, in(42, 14));
    EXPECT_EQ(piece(shaped, "side 1").longPoint, in(66, 14));
    EXPECT_EQ(runningLength(shaped, profiles.casing), in(219, 8));
    EXPECT_EQ(amount(shaped, Task::nonSquareCorner), 0);
}

// A 60 degree peak needs a 60 degree saw angle: more than most saws swing (trade.md section 1).
TEST(Polygon, SharpPeakIsWarnedOf) {
    const Takeoff takeoff = takeOne(polygon({{in(36), 60}, {in(36), 60}, {in(36), 60}}));
    EXPECT_DOUBLE_EQ(takeoff.pieces.at(0).right.sawAngle, 60);
    EXPECT_THAT(warnings(takeoff),
        testing::ElementsAre("W1: side 1 needs a saw angle of 60 degrees, more than the saw swings "
                             "(50); cut it with a jig."));
    EXPECT_EQ(amount(takeoff, Task::nonSquareCorner), 3000);
}

TEST(Polygon, GableOnAStoolRestsSquareAndMitersItsPeak) {
    // Legs 40, a 12-in-12 roof over 48: sides 40, 33.94, 33.94, 40, 48.
    const Takeoff takeoff = [] {
        Opening opening = polygon({{in(40), 135}, {Length::fromInches(33.941125), 90},
            {Length::fromInches(33.941125), 135}, {in(40), 90}, {in(48), 90}});
        opening.style = TrimStyle::stoolAndApron;
        return takeOne(opening);
    }();
    const Piece leg = piece(takeoff, "side 1");
    EXPECT_EQ(leg.left, PieceEnd());
    EXPECT_DOUBLE_EQ(leg.right.sawAngle, 22.5);
    // SP = 40 + 3/16 cot 67.5 = 40.077665; LP = SP + 3 1/4 cot 67.5 = 41.423859 [calc]
    EXPECT_NEAR(leg.shortPoint.toInches(), 40.077665, 1e-6);
    EXPECT_NEAR(leg.longPoint.toInches(), 41.423859, 1e-6);
    EXPECT_EQ(piece(takeoff, "side 4").right, PieceEnd());
    EXPECT_EQ(piece(takeoff, "apron").longPoint, in(54, 14));
    EXPECT_TRUE(pieces(takeoff, "sill").empty());
    EXPECT_EQ(amount(takeoff, Task::nonSquareCorner), 2000);
}

TEST(Polygon, WithTooFewSidesHasNoSize) {
    const Takeoff takeoff = takeOne(polygon({{in(60), 90}, {in(36), 90}}));
    EXPECT_TRUE(takeoff.pieces.empty());
    EXPECT_THAT(
        problems(takeoff), testing::ElementsAre("W1 has no size; its trim is not counted."));
}

// Chord 48, rise 8: R 40; casing inner radius R + r, outer R + r + c (trade.md section 1) [calc].
TEST(Arch, IsOrderedMadeAndItsLegsAreCut) {
    Opening opening = window(in(48), in(60));
    opening.shape = Shape::arch;
    opening.rise = in(8);
    opening.count = 2;
    const Takeoff takeoff = takeOne(opening);
    EXPECT_EQ(parts(takeoff, PartUse::archCasing), 2);
    EXPECT_TRUE(pieces(takeoff, "head").empty());
    EXPECT_THAT(warnings(takeoff),
        testing::ElementsAre("W1: order the arched casing made, inside radius 40 3/16\", outside "
                             "43 7/16\"; it is not cut from sticks."));
    const Piece leg = piece(takeoff, "left leg");
    // Inner edge: centre 28 above the sill line, sqrt(40.1875^2 - 24.1875^2) up, and r below
    // [calc].
    const double inner = 60 + 8 - 40 + std::sqrt(40.1875 * 40.1875 - 24.1875 * 24.1875) + 0.1875;
    EXPECT_NEAR(leg.shortPoint.toInches(), inner, 1e-6);
    EXPECT_EQ(leg.left, (PieceEnd{EndCut::miter, 45, 0}));
    EXPECT_GT(leg.right.sawAngle, 0);
    EXPECT_LT(leg.right.sawAngle, 45);
    EXPECT_EQ(piece(takeoff, "sill").longPoint, in(54, 14));
    ASSERT_FALSE(takeoff.tasks.empty());
    EXPECT_TRUE(takeoff.tasks[0].conditions.has(Condition::radius));
}

TEST(Arch, WithoutARiseIsAProblem) {
    Opening opening = window(in(48), in(60));
    opening.shape = Shape::arch;
    EXPECT_THAT(problems(takeOne(opening)), testing::ElementsAre("W1 is an arch without a rise."));
}

TEST(Arch, DoorStandsOnTheFloor) {
    Opening opening = door(in(36));
    opening.shape = Shape::arch;
    opening.rise = in(18); // a half circle: legs end square at the spring line
    const Takeoff takeoff = takeOne(opening);
    EXPECT_EQ(piece(takeoff, "left leg").longPoint, in(80));
    EXPECT_EQ(piece(takeoff, "left leg").left, PieceEnd());
    EXPECT_EQ(parts(takeoff, PartUse::archCasing), 2);
}

// trade.md section 1, 6 9/16 wall and 4 9/16 frame: 2 in deep; stock 3/4 thick.
TEST(JambExtension, HasFourSidesInAFrame) {
    Opening opening = window(in(36), in(60));
    opening.wallThickness = in(6, 9);
    opening.frameDepth = in(4, 9);
    opening.count = 2;
    const Takeoff takeoff = takeOne(opening);
    EXPECT_EQ(piece(takeoff, "extension, head").longPoint, in(37, 8));
    EXPECT_EQ(piece(takeoff, "extension, sill").longPoint, in(37, 8));
    EXPECT_EQ(piece(takeoff, "extension, left leg").longPoint, in(60));
    EXPECT_EQ(piece(takeoff, "extension, right leg").longPoint, in(60));
    EXPECT_EQ(piece(takeoff, "extension, head").count, 2);
    EXPECT_EQ(piece(takeoff, "extension, head").profile, profiles.jamb);
    EXPECT_EQ(amount(takeoff, Task::jambExtension), 2000);
}

TEST(JambExtension, HasThreeSidesOverAStool) {
    Opening opening = window(in(36), in(60), TrimStyle::stoolAndApron);
    opening.wallThickness = in(6, 9);
    opening.frameDepth = in(4, 9);
    const Takeoff takeoff = takeOne(opening);
    EXPECT_TRUE(pieces(takeoff, "extension, sill").empty());
    EXPECT_EQ(pieces(takeoff, "extension, head").size(), 1U);
}

TEST(JambExtension, IsNoneWithoutDepthOrInADrywallReturn) {
    Opening opening = window(in(36), in(60));
    opening.wallThickness = opening.frameDepth = in(4, 9);
    EXPECT_EQ(amount(takeOne(opening), Task::jambExtension), 0);
    opening.wallThickness = in(6, 9);
    opening.style = TrimStyle::drywallReturn;
    EXPECT_EQ(amount(takeOne(opening), Task::jambExtension), 0);
}

TEST(JambExtension, DeeperThanItsStockIsWarnedOf) {
    Opening opening = window(in(36), in(60));
    opening.wallThickness = in(10);
    opening.frameDepth = in(4, 9);
    EXPECT_THAT(
        warnings(takeOne(opening)), testing::ElementsAre(HasSubstr("wider than profile 3")));
}

} // namespace
} // namespace miterbook
