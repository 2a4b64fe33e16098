// SPDX-License-Identifier: GPL-3.0-or-later
// Base where it is known what stands in the wall, and where.
#include "plan/outline.h"
#include "trim_kit.h"

namespace miterbook {
namespace {

using namespace kit;
using testing::ElementsAre;
using testing::IsEmpty;

/// 12 x 14 with its upper left corner at x, y (feet).
Room drawn(std::int64_t id, Length x, Length y) {
    Room row;
    row.id = Id<Room>(id);
    row.level = Id<Level>(1);
    row.name = "Den";
    const Length w = ft(12);
    const Length h = ft(14);
    EXPECT_TRUE(setOutline(row, {{x, y}, {x + w, y}, {x + w, y + h}, {x, y + h}}).ok());
    return row;
}

Opening placed(int wall, Length along) {
    Opening opening = door(ft(2, 6));
    opening.room = Id<Room>(1);
    opening.wall = wall;
    opening.along = along;
    return opening;
}

Length netOf(const Takeoff& takeoff) {
    Length sum;
    for (const RunCorners& run : takeoff.runs)
        sum += run.net;
    return sum;
}

// A cased 2-6 door takes 30 + 2 x 3/16 + 2 x 3 1/4 = 36 7/8 [calc].
const Length gap = in(36, 14);

TEST(PlacedDoor, PartsTheBaseWhereItStands) {
    const Takeoff takeoff = takeOne(drawn(1, {}, {}), {placed(1, ft(5))});
    const auto wall = pieces(takeoff, "base, wall 1");
    ASSERT_EQ(wall.size(), 2U);
    EXPECT_EQ(wall[0].longPoint, in(41, 9)); // 60 - 36 7/8 / 2
    EXPECT_EQ(wall[1].longPoint, in(65, 9)); // 144 - 60 - 36 7/8 / 2
    EXPECT_EQ(wall[0].left.cut, EndCut::cope);
    EXPECT_EQ(wall[0].right, PieceEnd());
    EXPECT_EQ(wall[1].left, PieceEnd());
    EXPECT_EQ(netOf(takeoff), ft(52) - gap);
    EXPECT_EQ(takeoff.runs.at(0).inside, 4);
    EXPECT_THAT(takeoff.remarks, IsEmpty());
}

TEST(PlacedDoor, UpToACornerLeavesNoCornerThere) {
    const Takeoff takeoff = takeOne(drawn(1, {}, {}), {placed(1, in(18))});
    EXPECT_EQ(pieces(takeoff, "base, wall 1").size(), 1U);
    EXPECT_EQ(takeoff.runs.at(0).inside, 3);
    EXPECT_EQ(piece(takeoff, "base, wall 1").left, PieceEnd());
    EXPECT_EQ(piece(takeoff, "base, wall 4").right, PieceEnd());
    EXPECT_EQ(netOf(takeoff), ft(52) - in(18) - gap / 2);
}

TEST(PlacedDoor, StandsInTheRoomBehindItsWallToo) {
    WholePlan whole = emptyPlan();
    whole.rooms = {drawn(1, {}, {}), drawn(2, ft(12) + in(4, 8), ft(2))};
    Opening opening = placed(2, ft(7)); // its east wall, 7 ft down: 5 ft down in the other
    opening.otherRoom = Id<Room>(2);
    whole.openings.push_back(opening);
    const Takeoff takeoff = takeOff(whole, littleBook(), 0);
    const auto west = pieces(takeoff, "base, wall 4"); // of both rooms; the second's runs up
    ASSERT_EQ(west.size(), 3U);
    EXPECT_EQ(west[1].longPoint, ft(9) - gap / 2);
    EXPECT_EQ(west[2].longPoint, ft(5) - gap / 2);
}

TEST(PlacedDoor, AndOneWithoutAPlaceShareAWall) {
    Opening other = placed(1, {});
    other.id = Id<Opening>(2);
    const Takeoff takeoff = takeOne(drawn(1, {}, {}), {placed(1, ft(3)), other});
    const auto wall = pieces(takeoff, "base, wall 1");
    ASSERT_EQ(wall.size(), 3U); // before the first, and what is left of the rest in two
    EXPECT_EQ(wall[0].longPoint, ft(3) - gap / 2);
    EXPECT_EQ(wall[1].longPoint + wall[2].longPoint, ft(9) - gap / 2 - gap);
    EXPECT_EQ(netOf(takeoff), ft(52) - 2 * gap);
}

TEST(BaseBreaks, TakeBaseOffWhereTheyStand) {
    Room kitchen = drawn(1, {}, {});
    kitchen.breaks = {{1, {}, ft(12), BreakKind::cabinets}, {2, {}, ft(5), BreakKind::cabinets},
        {3, ft(4), ft(3), BreakKind::other}};
    const Takeoff takeoff = takeOne(kitchen);
    EXPECT_THAT(pieces(takeoff, "base, wall 1"), IsEmpty());
    EXPECT_EQ(piece(takeoff, "base, wall 2").longPoint, ft(9));
    const auto wall = pieces(takeoff, "base, wall 3");
    ASSERT_EQ(wall.size(), 2U);
    EXPECT_EQ(wall[0].longPoint, ft(4));
    EXPECT_EQ(wall[1].longPoint, ft(5));
    EXPECT_EQ(netOf(takeoff), ft(52 - 20));
    EXPECT_EQ(takeoff.runs.at(0).inside, 2);
}

TEST(BaseBreaks, DoNotPartAChairRail) {
    Room den = drawn(1, {}, {});
    den.baseChoice = RunChoice::none;
    den.chairRail = profiles.board;
    den.breaks = {{1, {}, ft(12), BreakKind::cabinets}};
    EXPECT_EQ(netOf(takeOne(den)), ft(52));
}

TEST(Shoe, IsLeftOutOnAWallAlone) {
    WholePlan whole = emptyPlan();
    whole.plan.shoe = profiles.shoe;
    whole.rooms.push_back(drawn(1, {}, {}));
    whole.rooms[0].walls[1].shoe = false;
    const Takeoff takeoff = takeOff(whole, littleBook(), 0);
    EXPECT_EQ(amount(takeoff, Task::base), 52000);
    EXPECT_EQ(amount(takeoff, Task::shoe), 38000);
}

} // namespace
} // namespace miterbook
