// SPDX-License-Identifier: GPL-3.0-or-later
#include "plan/redraw.h"
#include "plan/snap.h"

#include <gmock/gmock.h>

namespace miterbook {
namespace {

PlanPoint spot(double x, double y) {
    return {Length::fromInches(x), Length::fromInches(y)};
}

Outline boxAt(double x, double y, double w, double h) {
    return {spot(x, y), spot(x + w, y), spot(x + w, y + h), spot(x, y + h)};
}

Room roomOf(Outline outline) {
    Room room;
    room.name = "Den";
    EXPECT_TRUE(setOutline(room, std::move(outline)).ok());
    return room;
}

Opening doorAt(int wall, double along) {
    Opening opening;
    opening.kind = OpeningKind::prehungDoor;
    opening.width = Length::inches(30);
    opening.wall = wall;
    opening.along = Length::fromInches(along);
    opening.hand = Hand::left;
    return opening;
}

PlanPoint placeOf(const Room& room, const Opening& opening) {
    const auto place = placeIn(room, opening);
    EXPECT_TRUE(place);
    return place ? pointOn(room.outline, place->wall, place->along) : PlanPoint();
}

TEST(WallMoved, MakesTheRoomLargerSquareToTheWall) {
    EXPECT_EQ(wallMoved(boxAt(0, 0, 120, 96), 1, spot(12, 50)), boxAt(0, 0, 132, 96));
    EXPECT_EQ(wallMoved(boxAt(0, 0, 120, 96), 0, spot(3, -6)), boxAt(0, -6, 120, 102));
}

TEST(WallMoved, GoesAlongSlantedNeighbours) {
    // A wall of 45 degrees beside: the corner slides along it.
    const Outline outline{spot(0, 0), spot(96, 0), spot(120, 24), spot(120, 96), spot(0, 96)};
    const Outline moved = wallMoved(outline, 2, spot(12, 0));
    EXPECT_EQ(moved[2], spot(132, 36));
    EXPECT_EQ(moved[3], spot(132, 96));
}

TEST(Mirrored, IsTheSameRoomAgainAfterTwice) {
    Room room = roomOf(
        {spot(0, 0), spot(144, 0), spot(144, 48), spot(96, 60), spot(96, 96), spot(0, 96)});
    room.walls[1].base = false;
    room.breaks = {{1, Length::inches(10), Length::inches(36), BreakKind::cabinets}};
    const Room once = mirrored(room, Length::inches(50));
    EXPECT_TRUE(agree(once.walls, once.outline));
    EXPECT_TRUE(isClockwise(once.outline));
    EXPECT_NE(once, room);
    EXPECT_EQ(mirrored(once, Length::inches(50)), room);
    EXPECT_EQ(areaOf(once.outline), areaOf(room.outline));
    EXPECT_FALSE(once.walls[static_cast<std::size_t>(mirroredWall(2, 6)) - 1].base);
}

TEST(Mirrored, UndrawnWallsTurnTheSameCorners) {
    Room room;
    for (const int feet : {12, 8, 4, 4, 8, 12}) {
        Wall wall;
        wall.length = Length::feet(feet);
        room.walls.push_back(wall);
    }
    room.walls[2].corner = Corner::outside;
    room.walls[4].angle = Angle::degrees(135);
    EXPECT_EQ(mirrored(mirrored(room, {}), {}), room);
    EXPECT_EQ(mirrored(room, {}).walls[2].corner, Corner::outside);
}

TEST(Mirrored, OpeningStandsInTheMirroredPlaceOnTheOtherHand) {
    const Room room = roomOf(boxAt(10, 0, 144, 96));
    const Opening door = doorAt(2, 30);
    const Room other = mirrored(room, Length());
    const Opening mirroredDoor = mirrored(door, room);
    const PlanPoint was = placeOf(room, door);
    EXPECT_EQ(placeOf(other, mirroredDoor), (PlanPoint{-was.x, was.y}));
    EXPECT_EQ(mirroredDoor.hand, Hand::right);
    EXPECT_EQ(mirrored(mirroredDoor, other), door);
}

TEST(Rehung, StaysWhereItStoodWhenAWallIsMadeLongerAtItsFirstCorner) {
    const Room before = roomOf(boxAt(0, 0, 144, 96));
    const Opening door = doorAt(1, 60);
    const Room wider = roomOf(wallMoved(before.outline, 3, spot(-24, 0)));
    EXPECT_EQ(rehung(door, before, wider).along, Length::inches(84));
    const Room moved = roomOf(miterbook::moved(before.outline, spot(50, 7)));
    EXPECT_EQ(rehung(door, before, moved), door); // goes with its room
}

TEST(Rehung, IsKeptWithinItsWall) {
    const Room before = roomOf(boxAt(0, 0, 144, 96));
    const Room narrow = roomOf(boxAt(0, 0, 48, 96));
    EXPECT_EQ(rehung(doorAt(1, 120), before, narrow).along, Length::inches(33));
    const Room tiny = roomOf(boxAt(0, 0, 20, 96));
    EXPECT_EQ(rehung(doorAt(1, 120), before, tiny).along, Length::inches(10));
}

TEST(Rehung, FindsItsWallWhenCornersCome) {
    const Room before = roomOf(boxAt(0, 0, 144, 96));
    const Room after = roomOf(
        {spot(0, 0), spot(60, 0), spot(60, -24), spot(144, -24), spot(144, 96), spot(0, 96)});
    const Opening door = rehung(doorAt(3, 40), before, after);
    EXPECT_EQ(door.wall, 5);
    EXPECT_EQ(door.along, Length::inches(40));
}

TEST(Snap, GoesToFacesAndToAWallsThicknessBeforeThem) {
    const Outline other = boxAt(0, 0, 144, 120);
    SnapTo to{{&other}, {}, Length::fromInches(4.5), Length::inches(3), Length::inches(1)};
    EXPECT_EQ(snapped(spot(150, 61.3), to).point, spot(148.5, 61)); // the next room's face
    EXPECT_EQ(snapped(spot(145, -1), to).point, spot(144, 0));      // its corner
    EXPECT_EQ(snapped(spot(50.4, 126), to).point, spot(50, 124.5));
    const Snapped free = snapped(spot(70.2, 60.6), to);
    EXPECT_EQ(free.point, spot(70, 61));
    EXPECT_FALSE(free.toX || free.toY);
}

TEST(Snap, MakesRightAnglesWithCornersSetBefore) {
    SnapTo to{{}, {spot(7.5, 3.25), spot(107.5, 3.25)}, {}, Length::inches(4), Length::inches(1)};
    EXPECT_EQ(snapped(spot(105, 80), to).point, spot(107.5, 80));
    EXPECT_EQ(snapped(spot(9, 80), to).point, spot(7.5, 80));
}

TEST(Snap, MovesARoomAgainstItsNeighbour) {
    const Outline other = boxAt(0, 0, 144, 120);
    SnapTo to{{&other}, {}, Length::fromInches(4.5), Length::inches(3), Length::inches(1)};
    const Outline mine = boxAt(200, 200, 100, 60);
    EXPECT_EQ(snappedMove(mine, spot(-50, -198.5), to), spot(-51.5, -200));
}

} // namespace
} // namespace miterbook
