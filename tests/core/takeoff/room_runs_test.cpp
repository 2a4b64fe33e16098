// SPDX-License-Identifier: GPL-3.0-or-later
#include "trim_kit.h"

namespace miterbook {
namespace {

using namespace kit;
using testing::ElementsAre;
using testing::IsEmpty;

Length net(const Takeoff& takeoff, PieceOfWork work = PieceOfWork::base) {
    Length sum;
    for (const RunCorners& run : takeoff.runs) {
        if (run.work == work)
            sum += run.net;
    }
    return sum;
}

Opening doorIn(Id<Room> room, int wall = 0, Id<Room> other = {}) {
    Opening opening = door(ft(2, 6));
    opening.room = room;
    opening.otherRoom = other;
    opening.wall = wall;
    return opening;
}

// A 2-6 door takes 30 + 2 x 3/16 + 2 x 3 1/4 = 36 7/8 out of the base (trade.md section 6) [calc].
const Length doorGap = in(36, 14);

TEST(Base, IsTheWholeRoomWithoutDoors) {
    const Takeoff takeoff = takeOne(room({ft(12), ft(14), ft(12), ft(14)}));
    EXPECT_EQ(net(takeoff), ft(52));
    ASSERT_EQ(takeoff.pieces.size(), 4U);
    EXPECT_EQ(piece(takeoff, "base, wall 2").longPoint, ft(14));
    EXPECT_EQ(amount(takeoff, Task::base), 52000);
    EXPECT_EQ(takeoff.runs.at(0).inside, 4);
    EXPECT_EQ(takeoff.runs.at(0).outside, 0);
    EXPECT_THAT(takeoff.remarks, IsEmpty());
}

TEST(Base, IsCopedAtOneEndAndSquareAtTheOther) {
    const Takeoff takeoff = takeOne(room({ft(12), ft(14), ft(12), ft(14)}));
    for (const Piece& each : takeoff.pieces) {
        EXPECT_EQ(each.left.cut, EndCut::cope);
        EXPECT_EQ(each.right.cut, EndCut::square);
        EXPECT_EQ(each.shortPoint, each.longPoint);
    }
}

TEST(Base, IsMiteredWhereTheProfileSaysSo) {
    Room den = room({ft(12), ft(14), ft(12), ft(14)});
    den.baseChoice = RunChoice::own;
    den.base = profiles.flatBase; // 1/2 thick
    const Takeoff takeoff = takeOne(den);
    const Piece wall = piece(takeoff, "base, wall 1");
    EXPECT_EQ(wall.left, (PieceEnd{EndCut::miter, 45, 0}));
    EXPECT_EQ(wall.longPoint, ft(12)); // the back of an inside miter is the long side
    EXPECT_EQ(wall.shortPoint, ft(12) - in(1));
}

TEST(Base, IsLessByTheDoorInItsWall) {
    const Takeoff takeoff = takeOne(
        room({ft(12), ft(14), ft(12), ft(14)}), {doorIn(Id<Room>(1), 1)});
    const std::vector<Piece> wall = pieces(takeoff, "base, wall 1");
    ASSERT_EQ(wall.size(), 2U); // one on each side of the door
    EXPECT_EQ(wall[0].longPoint + wall[1].longPoint, ft(12) - doorGap);
    EXPECT_EQ(wall[0].left.cut, EndCut::cope);
    EXPECT_EQ(wall[0].right, PieceEnd());
    EXPECT_EQ(wall[1].left, PieceEnd());
    EXPECT_EQ(piece(takeoff, "base, wall 2").longPoint, ft(14));
    EXPECT_EQ(net(takeoff), ft(52) - doorGap);
}

TEST(Base, IsLessOnTheLongestWallWhereNoWallIsSaid) {
    const Takeoff takeoff = takeOne(room({ft(12), ft(14), ft(12), ft(13)}), {doorIn(Id<Room>(1))});
    const std::vector<Piece> wall = pieces(takeoff, "base, wall 2");
    ASSERT_EQ(wall.size(), 2U);
    EXPECT_EQ(wall[0].longPoint + wall[1].longPoint, ft(14) - doorGap);
    EXPECT_EQ(net(takeoff), ft(51) - doorGap);
}

TEST(Base, IsLessInTheOtherRoomOnlyByWhatIsOnThatSide) {
    Opening opening = doorIn(Id<Room>(2), 0, Id<Room>(1));
    EXPECT_EQ(net(takeOne(room({ft(12), ft(14), ft(12), ft(14)}), {opening})), ft(52) - doorGap);
    opening.sidesCased = 1; // cased in room 2 alone
    EXPECT_EQ(net(takeOne(room({ft(12), ft(14), ft(12), ft(14)}), {opening})), ft(52) - ft(2, 6));
}

TEST(Base, IsNotLessForWindowsAndCountsDoorsAlike) {
    Opening opening = doorIn(Id<Room>(1));
    opening.count = 3;
    Opening light = window(in(36), in(40));
    light.room = Id<Room>(1);
    EXPECT_EQ(net(takeOne(room({ft(12), ft(14), ft(12), ft(14)}), {opening, light})),
        ft(52) - 3 * doorGap);
}

TEST(Base, IsLessByCabinetsAndMoreByIslands) {
    Room kitchen = room({ft(12), ft(14), ft(12), ft(14)});
    kitchen.baseBreak = ft(20);
    kitchen.extraBase = ft(8);
    const Takeoff takeoff = takeOne(kitchen);
    EXPECT_EQ(net(takeoff), ft(40));
    EXPECT_EQ(piece(takeoff, "base, besides walls").longPoint, ft(8));
}

TEST(Base, LeavesOutWallsThatHaveNone) {
    Room den = room({ft(12), ft(14), ft(12), ft(14)});
    den.walls[1].base = false;
    const Takeoff takeoff = takeOne(den, {doorIn(Id<Room>(1), 2)});
    EXPECT_EQ(net(takeoff), ft(38)); // a door in the bare wall takes nothing off
    EXPECT_EQ(takeoff.runs.at(0).inside, 2);
    EXPECT_EQ(piece(takeoff, "base, wall 1").right, PieceEnd());
    EXPECT_EQ(piece(takeoff, "base, wall 3").left, PieceEnd());
}

// A textbook's sum: exterior walls 148 + interior 149 x 2 - doors 25 = 421 LF [pub, trade.md sec.
// 6].
TEST(Base, ComesToTheTextbooksSum) {
    Room inside = room({ft(148), ft(149), ft(149)});
    inside.baseBreak = ft(25);
    EXPECT_EQ(net(takeOne(inside)), ft(421));
}

TEST(Base, OutsideCornersAreMiteredAndLongerByTheThickness) {
    Room den = room({ft(12), ft(8), ft(4), ft(4), ft(8), ft(12)});
    den.walls[2].corner = Corner::outside;
    const Takeoff takeoff = takeOne(den);
    EXPECT_EQ(takeoff.runs.at(0).inside, 5);
    EXPECT_EQ(takeoff.runs.at(0).outside, 1);
    const Piece before = piece(takeoff, "base, wall 3");
    EXPECT_EQ(before.right, (PieceEnd{EndCut::miter, 45, 0}));
    EXPECT_EQ(before.longPoint, ft(4) + in(0, 9)); // base 9/16 thick
    EXPECT_EQ(before.shortPoint, ft(4));
    const Piece after = piece(takeoff, "base, wall 4");
    EXPECT_EQ(after.left, (PieceEnd{EndCut::miter, 45, 0}));
    EXPECT_EQ(after.longPoint, ft(4) + in(0, 9));
    EXPECT_EQ(net(takeoff), ft(48)); // the run itself is the walls
}

TEST(Base, BayCornersAreCutAtHalfTheirTurn) {
    Room den = room({ft(12), ft(8), ft(4)});
    den.baseChoice = RunChoice::own;
    den.base = profiles.flatBase;
    den.walls[0].angle = Angle::degrees(135);
    EXPECT_DOUBLE_EQ(piece(takeOne(den), "base, wall 1").right.sawAngle, 22.5);
}

TEST(Base, OfALoneWallHasSquareEnds) {
    Room nook = room({ft(12)});
    nook.walls[0].corner = Corner::open;
    const Takeoff takeoff = takeOne(nook);
    EXPECT_EQ(piece(takeoff, "base, wall 1").left, PieceEnd());
    EXPECT_EQ(piece(takeoff, "base, wall 1").right, PieceEnd());
    EXPECT_EQ(takeoff.runs.at(0).inside, 0);
}

// A wall longer than the longest stick is spliced, one splice per extra stick (trade.md section 6).
TEST(Base, LongWallsAreSplicedAndSaidSo) {
    const Takeoff takeoff = takeOne(room({ft(20), ft(10), ft(20), ft(10)}));
    const std::vector<Piece> wall = pieces(takeoff, "base, wall 1");
    ASSERT_EQ(wall.size(), 2U);
    EXPECT_EQ(wall[0].longPoint, ft(16));
    EXPECT_EQ(wall[0].right.cut, EndCut::splice);
    EXPECT_EQ(wall[1].longPoint, ft(4) + in(1)); // and an inch of scarf
    EXPECT_EQ(wall[1].left.cut, EndCut::splice);
    EXPECT_EQ(takeoff.runs.at(0).splices, 2);
    EXPECT_EQ(net(takeoff), ft(60));
    EXPECT_THAT(warnings(takeoff),
        ElementsAre("Den: base, wall 1 of 240\" is longer than the longest stick stocked (16 ft); "
                    "spliced.",
            "Den: base, wall 3 of 240\" is longer than the longest stick stocked (16 ft); "
            "spliced."));
}

TEST(Base, IsNotSplicedWhereADoorPartsIt) {
    const Takeoff takeoff = takeOne(
        room({ft(20), ft(10), ft(15), ft(10)}), {doorIn(Id<Room>(1), 1)});
    EXPECT_EQ(pieces(takeoff, "base, wall 1").size(), 2U);
    EXPECT_EQ(takeoff.runs.at(0).splices, 0);
    EXPECT_THAT(takeoff.remarks, IsEmpty());
    EXPECT_EQ(net(takeoff), ft(55) - doorGap);
}

TEST(Base, WallShorterThanItsDoorsGivesTheRestElsewhere) {
    const Takeoff takeoff = takeOne(
        room({ft(2), ft(14), ft(12), ft(14)}), {doorIn(Id<Room>(1), 1)});
    EXPECT_EQ(net(takeoff), ft(42) - doorGap);
    EXPECT_THAT(warnings(takeoff),
        testing::Contains(
            testing::HasSubstr("the doors in wall 1 take more than the wall is long")));
}

TEST(Base, RoomShorterThanItsDoorsHasNone) {
    Opening opening = doorIn(Id<Room>(1));
    opening.count = 5;
    const Takeoff takeoff = takeOne(room({ft(2), ft(3), ft(2), ft(3)}), {opening});
    EXPECT_THAT(takeoff.runs, IsEmpty());
    EXPECT_THAT(warnings(takeoff),
        ElementsAre(
            "Den: doors and wall without base together take 64 3/8\" more than the walls are "
            "long."));
}

TEST(Base, BuiltUpIsACondition) {
    Room den = room({ft(12), ft(14), ft(12), ft(14)});
    den.builtUpBase = true;
    EXPECT_TRUE(takeOne(den).tasks.at(0).conditions.has(Condition::builtUpBase));
}

TEST(Base, WithoutAProfileIsAProblemOfThePlanOrOfTheRoom) {
    WholePlan whole = emptyPlan();
    whole.plan.base = {};
    whole.rooms.assign(3, room({ft(12), ft(14), ft(12), ft(14)}));
    EXPECT_THAT(problems(takeOff(whole, littleBook(), 0)),
        ElementsAre("Plan Test has no base profile; rooms that go by it are counted without."));
    whole.rooms.resize(1);
    whole.rooms[0].baseChoice = RunChoice::own;
    EXPECT_THAT(problems(takeOff(whole, littleBook(), 0)),
        ElementsAre("Den has no profile for its base; that is not counted."));
    whole.rooms[0].baseChoice = RunChoice::none;
    EXPECT_THAT(problems(takeOff(whole, littleBook(), 0)), IsEmpty());
}

TEST(Shoe, FollowsTheBase) {
    WholePlan whole = emptyPlan();
    whole.plan.shoe = profiles.shoe;
    whole.rooms.push_back(room({ft(12), ft(14), ft(12), ft(14)}));
    whole.openings.push_back(doorIn(Id<Room>(1)));
    Takeoff takeoff = takeOff(whole, littleBook(), 0);
    EXPECT_EQ(amount(takeoff, Task::shoe), amount(takeoff, Task::base));
    EXPECT_EQ(takeoff.runs.size(), 2U);
    whole.rooms[0].baseChoice = RunChoice::none;
    EXPECT_THAT(takeOff(whole, littleBook(), 0).runs, IsEmpty());
    whole.rooms[0].shoeChoice = RunChoice::own;
    whole.rooms[0].shoe = profiles.shoe;
    takeoff = takeOff(whole, littleBook(), 0);
    EXPECT_EQ(amount(takeoff, Task::base), 0);
    EXPECT_GT(amount(takeoff, Task::shoe), 0);
}

TEST(ChairRail, IsPartedByDoorsButNotByCabinets) {
    Room den = room({ft(12), ft(14), ft(12), ft(14)});
    den.chairRail = profiles.board;
    den.baseBreak = ft(6);
    const Takeoff takeoff = takeOne(den, {doorIn(Id<Room>(1))});
    EXPECT_EQ(net(takeoff, PieceOfWork::wallTreatment), ft(52) - doorGap);
    EXPECT_EQ(
        amount(takeoff, Task::chairRail), Quantity::runningFeet(ft(52) - doorGap).thousandths());
}

} // namespace
} // namespace miterbook
