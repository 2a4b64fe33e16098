// SPDX-License-Identifier: GPL-3.0-or-later
#include "trim_kit.h"

namespace miterbook {
namespace {

using namespace kit;
using testing::ElementsAre;
using testing::IsEmpty;

TEST(Legs, OfAUsualDoorComeOutOfSevenFootAndInPairsOfFourteen) {
    EXPECT_THAT(warnings(takeOne(door(ft(2, 8)))), IsEmpty());
}

// trade.md section 1: 84 7/16 does not come out of a 7 ft stick, nor two out of 14 ft [calc].
TEST(Legs, FromTheSubfloorMissBothSticks) {
    Opening opening = door(ft(2, 8));
    opening.fromSubfloor = true;
    opening.flooring = in(1);
    EXPECT_THAT(warnings(takeOne(opening)),
        ElementsAre(
            "D1: its leg is 84 7/16\", longer than 7 ft legs; one does not come out of 7 ft, "
            "nor do two out of 14 ft."));
}

TEST(Legs, OfJustSevenFeetLeaveNoRoomForTheSawInFourteen) {
    Opening opening = door(ft(2, 8), in(80, 9)); // 80 9/16 + 3/16 + 3 1/4 = 84
    const Takeoff takeoff = takeOne(opening);
    EXPECT_EQ(piece(takeoff, "left leg").longPoint, in(84));
    EXPECT_THAT(
        warnings(takeoff), ElementsAre("D1: its leg is 84\"; two do not come out of 14 ft."));
}

TEST(Legs, OfJustSevenFeetAreFineWhereNoFourteenFootStickIsStocked) {
    PriceBook book = littleBook();
    book.of<Stick>().erase(Id<Stick>(114));
    EXPECT_THAT(warnings(takeOne(door(ft(2, 8), in(80, 9)), book)), IsEmpty());
}

TEST(Legs, OfAnEightFootDoorAreWarnedOf) {
    EXPECT_THAT(warnings(takeOne(door(ft(2, 8), ft(8)))),
        ElementsAre(testing::HasSubstr("its leg is 99 7/16\", longer than 7 ft legs")));
}

TEST(Legs, OfWindowsAreNot) {
    EXPECT_THAT(warnings(takeOne(window(in(36), ft(8)))), IsEmpty());
}

TEST(LongSides, OfAWindowAreThoseOverFiveFeet) {
    Takeoff takeoff = takeOne(window(in(36), in(60))); // legs 66 7/8, head 42 7/8
    EXPECT_EQ(amount(takeoff, Task::longSide), 2000);
    const auto it = std::ranges::find(takeoff.tasks, Task::longSide, &TaskCount::task);
    ASSERT_NE(it, takeoff.tasks.end());
    EXPECT_EQ(it->what, "2 sides up to 66 7/8\"");
    takeoff = takeOne(window(in(53, 2), in(53, 2))); // 60 exactly is not over
    EXPECT_EQ(amount(takeoff, Task::longSide), 0);
    takeoff = takeOne(window(in(53, 3), in(53, 3)));
    EXPECT_EQ(amount(takeoff, Task::longSide), 4000);
}

TEST(LongSides, OfADoorAreOnlyThoseLongerThanTheUsualLeg) {
    EXPECT_EQ(amount(takeOne(door(ft(2, 8))), Task::longSide), 0);
    EXPECT_EQ(amount(takeOne(door(ft(2, 8), ft(8))), Task::longSide), 4000);
}

TEST(Pieces, LongerThanAnyStickAreAProblem) {
    const Takeoff takeoff = takeOne(window(ft(17), in(60)));
    EXPECT_THAT(problems(takeoff),
        ElementsAre(
            "W1: head of 210 7/8\" does not come out of the longest stick stocked (16 ft)."));
}

TEST(Pieces, ShorterThanEightInchesAreWarnedOfOnce) {
    const Takeoff takeoff = takeOne(window(in(1), in(1)));
    EXPECT_THAT(warnings(takeoff),
        ElementsAre(
            "W1: left leg is only 7 7/8\" long; cut it from a longer piece, hands well away "
            "from the blade."));
}

} // namespace
} // namespace miterbook
