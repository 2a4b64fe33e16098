// SPDX-License-Identifier: GPL-3.0-or-later
#include "cut/saw_place.h"
#include "plan/outline.h"

#include <gtest/gtest.h>

#include <cmath>

namespace miterbook {
namespace {

Room square(std::int64_t id, int x, RoomUse use) {
    Room room;
    room.id = Id<Room>(id);
    room.level = Id<Level>(1);
    room.name = "Room " + std::to_string(id);
    room.use = use;
    const Length a = Length::feet(x);
    const Length b = Length::feet(x + 10);
    EXPECT_TRUE(
        setOutline(room, {{a, {}}, {b, {}}, {b, Length::feet(10)}, {a, Length::feet(10)}}).ok());
    return room;
}

Opening windowIn(std::int64_t room, int wall, int along) {
    Opening opening;
    opening.room = Id<Room>(room);
    opening.wall = wall;
    opening.along = Length::feet(along);
    return opening;
}

TEST(SawPlace, IsWhereLeastIsWalked) {
    WholePlan whole;
    whole.rooms = {square(1, 0, RoomUse::room), square(2, 11, RoomUse::room)};
    EXPECT_FALSE(sawPlaceOn(whole, Id<Level>(1)));
    whole.openings = {windowIn(2, 1, 3), windowIn(2, 1, 7), windowIn(2, 3, 5)};
    const auto place = sawPlaceOn(whole, Id<Level>(1));
    ASSERT_TRUE(place);
    EXPECT_EQ(place->room, Id<Room>(2));
    EXPECT_GE(place->spot.y, Length::feet(3)) << "nobody saws with the back to a wall";
    // No spot of a foot's grid that is as far from the walls of either room is better.
    std::vector<Carry> carries;
    for (const PlanPoint& at : {PlanPoint{Length::feet(14), {}}, PlanPoint{Length::feet(18), {}},
             PlanPoint{Length::feet(16), Length::feet(10)}})
        carries.push_back({{at.x, at.y}, 1});
    for (const int x : {3, 4, 5, 6, 7, 14, 15, 16, 17, 18}) {
        for (int y = 3; y <= 7; ++y)
            EXPECT_GE(carryingDistance({Length::feet(x), Length::feet(y)}, carries)
                    + Length::sixteenths(1),
                place->walked);
    }
}

TEST(SawPlace, StandsFromTheWallsAsFarAsANarrowRoomLetsIt) {
    WholePlan whole;
    Room hall = square(1, 0, RoomUse::hall);
    const Length wide = Length::feet(5);
    const Length long_ = Length::feet(20);
    ASSERT_TRUE(setOutline(hall, {{}, {long_, {}}, {long_, wide}, {{}, wide}}).ok());
    whole.rooms = {hall};
    whole.openings = {windowIn(1, 1, 10)};
    const auto place = sawPlaceOn(whole, Id<Level>(1));
    ASSERT_TRUE(place);
    EXPECT_NEAR(place->spot.y.toInches(), 24, 0.01); // 36 in from both walls is too much
    EXPECT_NEAR(place->spot.x.toInches(), 120, 0.01);
}

TEST(SawPlace, IsNotInAClosetOrBath) {
    WholePlan whole;
    whole.rooms = {square(1, 0, RoomUse::room), square(2, 11, RoomUse::bath)};
    whole.openings = {windowIn(2, 1, 3), windowIn(2, 1, 7)};
    EXPECT_EQ(sawPlaceOn(whole, Id<Level>(1))->room, Id<Room>(1));
}

TEST(SawPlace, IsNeverBeatenByASpotThatSomebodyChose) {
    WholePlan whole;
    whole.rooms = {square(1, 0, RoomUse::room), square(2, 11, RoomUse::room)};
    const Spot corner{Length::feet(1), Length::feet(9)};
    EXPECT_FALSE(walkedFrom(whole, Id<Level>(1), corner)) << "nothing is carried yet";
    whole.openings = {windowIn(1, 1, 5), windowIn(2, 3, 5)};
    whole.openings[0].sidesCased = 2;
    const auto walked = walkedFrom(whole, Id<Level>(1), corner);
    ASSERT_TRUE(walked);
    // Two sets to (5, 0) and one to (16, 10), there and back [calc].
    EXPECT_NEAR(walked->toFeet(), 4 * std::hypot(4, 9) + 2 * std::hypot(15, 1), 1e-6);
    EXPECT_GE(*walked, sawPlaceOn(whole, Id<Level>(1))->walked);
    EXPECT_FALSE(walkedFrom(whole, Id<Level>(2), corner)) << "another level";
}

} // namespace
} // namespace miterbook
