// SPDX-License-Identifier: GPL-3.0-or-later
#include "plan/leaves.h"
#include "plan/marks.h"
#include "plan/place.h"
#include "plan/plan_checks.h"

#include <gmock/gmock.h>

namespace miterbook {
namespace {

PlanPoint in(double x, double y) {
    return {Length::fromInches(x), Length::fromInches(y)};
}

Outline box(double x, double y, double w, double h) {
    return {in(x, y), in(x + w, y), in(x + w, y + h), in(x, y + h)};
}

TEST(Leaves, OfAWideOutsideDoorSlideWhereItIsHungOnNoSide) {
    Opening door;
    door.kind = OpeningKind::exteriorDoor;
    door.width = Length::inches(72);
    EXPECT_EQ(leavesOf(door), Leaves::sliding);
    door.hand = Hand::left;
    EXPECT_EQ(leavesOf(door), Leaves::swing);
    door.hand = Hand::none;
    door.width = Length::inches(36);
    EXPECT_EQ(leavesOf(door), Leaves::swing);
    door.kind = OpeningKind::casedOpening;
    EXPECT_EQ(leavesOf(door), Leaves::none);
}

TEST(WallPlace, IsTheNearestWall) {
    const auto place = nearestWall(box(0, 0, 144, 120), in(140, 30));
    ASSERT_TRUE(place);
    EXPECT_EQ(place->wall, 1U);
    EXPECT_EQ(place->along, Length::inches(30));
    EXPECT_EQ(place->off, Length::inches(-4)); // inside the room
    EXPECT_EQ(nearestWall(box(0, 0, 144, 120), in(30, -2))->off, Length::inches(2));
    EXPECT_FALSE(nearestWall({}, in(0, 0)));
}

TEST(WallPlace, IsFoundAcrossTheWall) {
    const Outline left = box(0, 0, 144, 120);
    const Outline right = box(148.5, 24, 100, 60);
    const auto place = across(left, {1, Length::inches(40), {}}, right);
    ASSERT_TRUE(place);
    EXPECT_EQ(place->wall, 3U); // its west wall, which runs up the sheet from (148.5, 84)
    EXPECT_EQ(place->along, Length::inches(44));
    EXPECT_EQ(place->off, Length::fromInches(4.5));
    EXPECT_FALSE(across(left, {1, Length::inches(10), {}}, right));               // beside it
    EXPECT_FALSE(across(left, {1, Length::inches(40), {}}, box(200, 0, 50, 50))); // too far
    EXPECT_FALSE(across(left, {0, Length::inches(40), {}}, right));
}

TEST(WallPlace, OfAnOpeningNeedsWallAndDistance) {
    Room room;
    ASSERT_TRUE(setOutline(room, box(0, 0, 144, 120)).ok());
    Opening opening;
    opening.wall = 2;
    EXPECT_FALSE(placeIn(room, opening));
    opening.along = Length::inches(40);
    ASSERT_TRUE(placeIn(room, opening));
    EXPECT_EQ(pointOn(room.outline, 1, opening.along), in(144, 40));
    opening.wall = 5;
    EXPECT_FALSE(placeIn(room, opening));
}

std::string refusal(const Room& room) {
    const auto result = checkRoom(room);
    return result ? "" : result.error().sentence;
}

TEST(DrawnRoomCheck, RefusesWallsThatAreNotTheOutlines) {
    Room room;
    room.name = "Den";
    ASSERT_TRUE(setOutline(room, box(0, 0, 144, 120)).ok());
    EXPECT_EQ(refusal(room), "");
    Room other = room;
    other.walls[0].length += Length::inches(1);
    EXPECT_EQ(refusal(other), "Den has walls that are not those of its outline.");
    other = room;
    other.outline = {in(0, 0), in(10, 10), in(10, 0), in(0, 10)};
    EXPECT_EQ(refusal(other), "Den crosses itself: wall 1 meets wall 3.");
    other = room;
    std::reverse(other.outline.begin(), other.outline.end());
    EXPECT_EQ(refusal(other), "Den is drawn the wrong way round.");
}

TEST(DrawnRoomCheck, RefusesBreaksThatItsWallsCannotHold) {
    Room room;
    room.name = "Bath";
    ASSERT_TRUE(setOutline(room, box(0, 0, 144, 120)).ok());
    room.breaks = {{1, Length::inches(20), Length::inches(60), BreakKind::tub}};
    EXPECT_EQ(refusal(room), "");
    room.breaks[0].from = Length::inches(100);
    EXPECT_EQ(refusal(room), "Bath has tub past the end of wall 1.");
    room.breaks[0] = {5, Length(), Length::inches(60), BreakKind::tub};
    EXPECT_EQ(refusal(room), "Bath has tub in wall 5, which it does not have.");
}

TEST(Marks, ComeToTheirQuantity) {
    OtherWork work;
    work.name = "Attic access";
    setMarks(work, MarkKind::count, {in(0, 0), in(5, 5), in(9, 9)});
    EXPECT_EQ(work.quantity, Quantity::count(3));
    setMarks(work, MarkKind::run, {in(0, 0), in(36, 0), in(36, 48)});
    EXPECT_EQ(work.quantity, Quantity::count(7));
    setMarks(work, MarkKind::area, box(0, 0, 48, 36));
    EXPECT_EQ(work.quantity, Quantity::count(12));
    EXPECT_TRUE(checkOtherWork(work).ok());
    work.quantity = Quantity::count(11);
    EXPECT_THAT(checkOtherWork(work).error().sentence, testing::HasSubstr("another quantity"));
}

} // namespace
} // namespace miterbook
