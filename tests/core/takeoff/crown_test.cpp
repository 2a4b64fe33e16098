// SPDX-License-Identifier: GPL-3.0-or-later
#include "trim_kit.h"

#include <cmath>
#include <numbers>

namespace miterbook {
namespace {

using namespace kit;
using testing::ElementsAre;

Room crowned(std::initializer_list<Length> walls) {
    Room den = room(walls);
    den.baseChoice = RunChoice::none;
    den.crownChoice = RunChoice::own;
    den.crown = profiles.crown; // 3 5/8 wide, 38 degrees
    return den;
}

TEST(Crown, RunsTheWholePerimeterWhateverTheDoors) {
    Opening opening = door(ft(2, 6));
    opening.room = Id<Room>(1);
    const Takeoff takeoff = takeOne(crowned({ft(12), ft(14), ft(12), ft(14)}), {opening});
    ASSERT_EQ(takeoff.runs.size(), 1U);
    EXPECT_EQ(takeoff.runs[0].net, ft(52));
    EXPECT_EQ(takeoff.runs[0].inside, 4);
    EXPECT_EQ(takeoff.runs[0].work, PieceOfWork::crown);
    EXPECT_EQ(piece(takeoff, "crown, wall 1").left.cut, EndCut::cope);
    EXPECT_EQ(amount(takeoff, Task::largeCrown), 52000);
}

// trade.md section 4: spring 38, corner 90: miter 31.6190, bevel 33.8629 [pub: corwinwmc.com].
TEST(Crown, OutsideCornersAreCompoundCuts) {
    Room den = crowned({ft(12), ft(8), ft(4), ft(4), ft(8), ft(12)});
    den.walls[2].corner = Corner::outside;
    const Takeoff takeoff = takeOne(den);
    const Piece before = piece(takeoff, "crown, wall 3");
    EXPECT_EQ(before.right.cut, EndCut::miter);
    EXPECT_NEAR(before.right.sawAngle, 31.6190, 5e-5);
    EXPECT_NEAR(before.right.bevel, 33.8629, 5e-5);
    // It reaches over the ceiling by width x sin 38 = 2.23177 [calc].
    const double reach = 3.625 * std::sin(38 * std::numbers::pi / 180);
    EXPECT_NEAR(before.longPoint.toInches(), 48 + reach, 1e-6);
    EXPECT_EQ(before.shortPoint, ft(4));
}

// Spring 38, corner 135: miter 14.3064, bevel 17.5512 [pub: corwinwmc.com].
TEST(Crown, BayCornersTakeTheirOwnAngles) {
    Room den = crowned({ft(12), ft(8), ft(4), ft(4), ft(8), ft(12)});
    den.walls[2].corner = Corner::outside;
    den.walls[2].angle = Angle::degrees(135);
    const Piece before = piece(takeOne(den), "crown, wall 3");
    EXPECT_NEAR(before.right.sawAngle, 14.3064, 5e-5);
    EXPECT_NEAR(before.right.bevel, 17.5512, 5e-5);
}

TEST(Crown, SharpCornersAreWarnedOf) {
    Room den = crowned({ft(12), ft(8), ft(4), ft(4)});
    den.walls[2].corner = Corner::outside;
    den.walls[2].angle = Angle::degrees(45); // miter 56.07 [pub]
    EXPECT_THAT(warnings(takeOne(den)),
        ElementsAre("Den: a corner of the crown needs a saw angle of 56 degrees, more than the saw "
                    "swings (50)."));
}

TEST(Crown, LeavesOutWallsThatHaveNone) {
    Room den = crowned({ft(12), ft(14), ft(12), ft(14)});
    den.walls[0].crown = false;
    const Takeoff takeoff = takeOne(den);
    EXPECT_EQ(takeoff.runs.at(0).net, ft(40));
    EXPECT_EQ(takeoff.runs.at(0).inside, 2);
}

TEST(Crown, IsLargeMediumOrSmallByItsWidth) {
    PriceBook book = littleBook();
    const auto task = [&](Length width) {
        addProfile(book, profiles.crown, ProfileUse::crown, in(0, 9), width, {16});
        return takeOne(crowned({ft(12), ft(14), ft(12), ft(14)}), {}, book).tasks.at(0).task;
    };
    EXPECT_EQ(task(in(2, 4)), Task::smallCrown);
    EXPECT_EQ(task(in(2, 5)), Task::mediumCrown);
    EXPECT_EQ(task(in(3, 8)), Task::mediumCrown);
    EXPECT_EQ(task(in(3, 9)), Task::largeCrown);
}

TEST(Crown, ByThePlanWithoutAProfileIsAProblem) {
    Room den = crowned({ft(12), ft(14), ft(12), ft(14)});
    den.crownChoice = RunChoice::plan;
    EXPECT_THAT(problems(takeOne(den)),
        ElementsAre("Plan Test has no crown profile; rooms that go by it are counted without."));
}

} // namespace
} // namespace miterbook
