// SPDX-License-Identifier: GPL-3.0-or-later
#include "takeoff/totals.h"

#include "support/sample_house.h"
#include "trim_kit.h"

#include <map>

namespace miterbook {
namespace {

using namespace kit;

TEST(Totals, OfOneWindowAreItsOwn) {
    Opening opening = window(in(36), in(60));
    opening.count = 2;
    const Totals sum = totals(takeOne(opening));
    ASSERT_EQ(sum.profiles.size(), 1U);
    EXPECT_EQ(sum.profiles[0].running, 2 * in(219, 8));
    EXPECT_EQ(sum.profiles[0].pieces, 8);
    ASSERT_EQ(sum.profiles[0].shares.size(), 1U);
    EXPECT_EQ(sum.profiles[0].shares[0].source.name, "W1");
    EXPECT_EQ(sum.profiles[0].shares[0].running, 2 * in(219, 8));
    ASSERT_EQ(sum.tasks.size(), 2U); // the frames and their long sides
    EXPECT_EQ(sum.tasks[0].task, Task::pictureFrameWindow);
    EXPECT_EQ(sum.tasks[0].quantity, Quantity::count(2));
}

TEST(Totals, KeepPiecesOfWorkApart) {
    WholePlan whole = emptyPlan();
    whole.openings = {window(in(36), in(60)), door(ft(2, 8))};
    whole.openings[1].id = Id<Opening>(2);
    const Totals sum = totals(takeOff(whole, littleBook(), 0));
    ASSERT_EQ(sum.profiles.size(), 2U);
    EXPECT_EQ(sum.profiles[0].work, PieceOfWork::doors);
    EXPECT_EQ(sum.profiles[1].work, PieceOfWork::windows);
    EXPECT_EQ(sum.profiles[0].profile, sum.profiles[1].profile);
}

struct Sums {
    std::map<std::pair<PieceOfWork, Id<Profile>>, std::pair<Length, int>> profiles;
    std::map<std::pair<PieceOfWork, Task>, Quantity> tasks;
    std::map<std::pair<PieceOfWork, PartUse>, int> parts;

    void add(const Totals& totals) {
        for (const ProfileTotal& total : totals.profiles) {
            auto& [running, pieces] = profiles[{total.work, total.profile}];
            running += total.running;
            pieces += total.pieces;
        }
        for (const TaskTotal& total : totals.tasks)
            tasks[{total.work, total.task}] += total.quantity;
        for (const PartTotal& total : totals.parts)
            parts[{total.work, total.use}] += total.count;
    }
    bool operator==(const Sums&) const = default;
};

TEST(Totals, PlacesAndSharesAddUpToTheWhole) {
    const PriceBook book = littleBook();
    IdSource ids(1000);
    const WholePlan whole = sampleHouse(book, ids).whole();
    const Takeoff takeoff = takeOff(whole, book, 2);
    const Totals all = totals(takeoff);
    Sums places;
    for (const PlaceTotals& place : totalsByPlace(takeoff, whole)) {
        EXPECT_FALSE(place.totals.empty());
        places.add(place.totals);
    }
    Sums wholeSums;
    wholeSums.add(all);
    EXPECT_EQ(places, wholeSums);
    for (const ProfileTotal& total : all.profiles) {
        EXPECT_EQ(total.running > Length(), total.pieces > 0);
        Length shares;
        for (const ProfileTotal::Share& share : total.shares)
            shares += share.running;
        EXPECT_EQ(shares, total.running);
    }
}

TEST(Totals, PlacesComeByLevelAndRoomThenTheRest) {
    WholePlan whole = emptyPlan();
    whole.rooms = {room({ft(12), ft(10), ft(12), ft(10)})};
    whole.openings = {window(in(36), in(60)), window(in(36), in(60))};
    whole.openings[0].id = Id<Opening>(2); // on the level, in no room
    whole.openings[1].room = Id<Room>(1);
    const Takeoff takeoff = takeOff(whole, littleBook(), 1);
    const std::vector<PlaceTotals> places = totalsByPlace(takeoff, whole);
    ASSERT_EQ(places.size(), 3U);
    EXPECT_EQ(places[0].room, Id<Room>(1));
    EXPECT_EQ(places[0].totals.profiles.size(), 2U);
    EXPECT_EQ(places[1].level, Id<Level>(1));
    EXPECT_FALSE(places[1].room);
    EXPECT_EQ(places[1].totals.profiles.size(), 1U);
    EXPECT_FALSE(places[2].level);
    EXPECT_EQ(places[2].totals.tasks.at(0).task, Task::trip);
}

} // namespace
} // namespace miterbook
