// SPDX-License-Identifier: GPL-3.0-or-later
#include "takeoff/forgotten.h"

#include "trim_kit.h"

namespace miterbook {
namespace {

using namespace kit;
using testing::Contains;
using testing::ElementsAre;
using testing::IsEmpty;
using testing::Not;

/// A den of four walls and a hall without base, with one door between them: nothing forgotten.
WholePlan tidyPlan() {
    WholePlan whole = emptyPlan();
    whole.rooms = {room({ft(12), ft(14), ft(12), ft(14)}), room({})};
    whole.rooms[1].id = Id<Room>(2);
    whole.rooms[1].name = "Hall";
    whole.rooms[1].baseChoice = RunChoice::none;
    Opening opening = door(ft(2, 6));
    opening.room = Id<Room>(1);
    opening.otherRoom = Id<Room>(2);
    opening.lockset = Lockset::passage;
    whole.openings = {opening};
    return whole;
}

std::vector<std::string> said(const WholePlan& whole) {
    const std::vector<Remark> remarks = forgotten(whole, littleBook());
    EXPECT_THAT(sentences(remarks, Remark::Weight::problem), IsEmpty());
    return sentences(remarks, Remark::Weight::warning);
}

/// What is said once the tidy plan has been changed.
template <class Change>
std::vector<std::string> saidAfter(Change change) {
    WholePlan whole = tidyPlan();
    change(whole);
    return said(whole);
}

TEST(Forgotten, NothingInATidyPlan) {
    EXPECT_THAT(said(tidyPlan()), IsEmpty());
}

TEST(Forgotten, ClosetWithoutShelving) {
    const auto closet = [](WholePlan& whole) { whole.rooms[0].use = RoomUse::closet; };
    EXPECT_THAT(saidAfter(closet), ElementsAre("Den has no shelving."));
    const auto shelved = [&](WholePlan& whole) {
        closet(whole);
        whole.closets.emplace_back().room = Id<Room>(1);
    };
    EXPECT_THAT(saidAfter(shelved), IsEmpty());
}

TEST(Forgotten, DoorCasedOnOneSideOnly) {
    const auto one = [](WholePlan& whole) { whole.openings[0].sidesCased = 1; };
    EXPECT_THAT(saidAfter(one), ElementsAre("D1 is cased on one side only."));
    const auto bifold = [&](WholePlan& whole) {
        one(whole);
        whole.openings[0].kind = OpeningKind::bifoldDoor;
    };
    EXPECT_THAT(saidAfter(bifold), IsEmpty());
    const auto none = [](WholePlan& whole) { whole.openings[0].sidesCased = 0; };
    EXPECT_THAT(saidAfter(none), ElementsAre("D1 is cased on no side."));
}

TEST(Forgotten, DeepWallWithoutExtension) {
    const auto deep = [](WholePlan& whole) { whole.openings[0].wallThickness = in(6, 9); };
    EXPECT_THAT(saidAfter(deep),
        ElementsAre("D1 stands in a wall of 6 9/16\" and has no jamb "
                    "extension: its frame depth is not said."));
    const auto framed = [&](WholePlan& whole) {
        deep(whole);
        whole.openings[0].frameDepth = in(4, 9);
    };
    EXPECT_THAT(saidAfter(framed), IsEmpty());
}

TEST(Forgotten, EightFootDoorWithSevenFootLegs) {
    EXPECT_THAT(saidAfter([](WholePlan& whole) { whole.openings[0].height = ft(8); }),
        ElementsAre("D1 is 96\" high: 7 ft legs will not do."));
}

TEST(Forgotten, RoomWithoutWalls) {
    EXPECT_THAT(saidAfter([](WholePlan& whole) { whole.rooms[0].walls.clear(); }),
        ElementsAre("Den has no walls: no base or crown is counted for it."));
}

TEST(Forgotten, WindowInNoRoom) {
    const auto light = [](WholePlan& whole) { whole.openings.push_back(window(in(36), in(40))); };
    EXPECT_THAT(saidAfter(light), ElementsAre("W1 stands in no room."));
}

TEST(Forgotten, OpeningInAWallThatIsNotThere) {
    EXPECT_THAT(saidAfter([](WholePlan& whole) { whole.openings[0].wall = 5; }),
        ElementsAre("D1 stands in wall 5 of Den, which has only 4."));
}

TEST(Forgotten, BathDoorWithoutPrivacy) {
    const auto bath = [](WholePlan& whole) { whole.rooms[1].use = RoomUse::bath; };
    EXPECT_THAT(saidAfter(bath), ElementsAre("D1 is a bath door without a privacy set."));
    const auto linen = [&](WholePlan& whole) {
        bath(whole);
        whole.rooms[0].use = RoomUse::closet;
    };
    EXPECT_THAT(saidAfter(linen), Not(Contains(testing::HasSubstr("privacy"))));
}

TEST(Forgotten, Hardware) {
    EXPECT_THAT(saidAfter([](WholePlan& whole) { whole.openings[0].lockset = Lockset::none; }),
        ElementsAre("D1 has no lockset."));
    const auto outside = [](WholePlan& whole) {
        whole.openings[0].kind = OpeningKind::exteriorDoor;
        whole.openings[0].otherRoom = {};
        whole.openings[0].sidesCased = 1;
    };
    EXPECT_THAT(saidAfter(outside),
        ElementsAre("D1 is an exterior door with neither keyed set nor deadbolt."));
}

TEST(Forgotten, OtherSideOfADoor) {
    EXPECT_THAT(saidAfter([](WholePlan& whole) { whole.openings[0].otherRoom = {}; }),
        ElementsAre("D1 is cased on both sides, but the room on its other side is not said; base "
                    "there is not shortened."));
}

TEST(Forgotten, RoomWithoutADoor) {
    EXPECT_THAT(saidAfter([](WholePlan& whole) { whole.openings.clear(); }),
        ElementsAre("Den has no door or opening into it; its base is not shortened."));
    EXPECT_THAT(saidAfter([](WholePlan& whole) {
        whole.openings.clear();
        whole.rooms[0].walls[0].corner = Corner::open; // to the next room
    }),
        IsEmpty());
}

TEST(Forgotten, KitchenWithoutCabinets) {
    const auto kitchen = [](WholePlan& whole) { whole.rooms[0].use = RoomUse::kitchen; };
    EXPECT_THAT(saidAfter(kitchen),
        ElementsAre("Den is a kitchen with base all round: no wall is "
                    "taken off for cabinets."));
    const auto broken = [&](WholePlan& whole) {
        kitchen(whole);
        whole.rooms[0].baseBreak = ft(10);
    };
    EXPECT_THAT(saidAfter(broken), IsEmpty());
}

TEST(Forgotten, SameMarkTwiceOnALevel) {
    const auto twice = [](WholePlan& whole) {
        whole.openings.push_back(whole.openings[0]);
        whole.openings[1].id = Id<Opening>(2);
    };
    EXPECT_THAT(saidAfter(twice), ElementsAre("D1 is marked twice on the same level."));
}

TEST(Forgotten, StairAndLevel) {
    const auto upper = [](WholePlan& whole) {
        whole.levels.push_back(whole.levels[0]);
        whole.levels[1].id = Id<Level>(2);
        whole.levels[1].name = "Upper";
        whole.levels[1].upper = true;
    };
    EXPECT_THAT(saidAfter(upper),
        ElementsAre(
            "Upper has no rooms and no openings.", "The plan has an upper level and no stair."));
    const auto stairRoom = [](WholePlan& whole) { whole.rooms[0].use = RoomUse::stair; };
    EXPECT_THAT(saidAfter(stairRoom), ElementsAre("Den has no stair."));
}

TEST(Forgotten, ShelvesWiderThanTheirStock) {
    const auto deep = [](WholePlan& whole) {
        Closet closet;
        closet.name = "Pantry";
        closet.room = Id<Room>(1);
        closet.depth = in(16);
        closet.shelf = profiles.shelf;
        whole.closets = {closet};
    };
    EXPECT_THAT(saidAfter(deep),
        ElementsAre("Pantry has shelves 16\" deep, wider than profile 9 "
                    "(11 1/4\"): rip them from sheet goods."));
}

} // namespace
} // namespace miterbook
