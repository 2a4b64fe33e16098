// SPDX-License-Identifier: GPL-3.0-or-later
// Hours against the bid while a house is open.
#include "core/hours/time_kit.h"

#include "hours/house_progress.h"

#include <gtest/gtest.h>

#include <algorithm>

using namespace miterbook;

namespace {

WorkBid bidFor(PieceOfWork work, int hours, int units) {
    WorkBid bid;
    bid.work = work;
    bid.hours = Hours::whole(hours);
    bid.units = Quantity::count(units);
    return bid;
}

const std::vector bids{bidFor(PieceOfWork::doors, 20, 20), bidFor(PieceOfWork::base, 12, 600),
    bidFor(PieceOfWork::trips, 4, 2)};

} // namespace

TEST(HouseProgress, ForecastsFromUnitsFinished) {
    // [calc] 10 of 20 doors took 12 of 20 bid hours: 24 at completion, 4 over.
    const auto house = houseProgress(bids,
        {timeAt(0, lena, PieceOfWork::doors, Hours::whole(8), Quantity::count(7)),
            timeAt(1, lena, PieceOfWork::doors, Hours::whole(4), Quantity::count(3))});
    const WorkProgress& doors = house.works.front();
    EXPECT_EQ(doors.by, DoneBy::units);
    EXPECT_EQ(doors.done, Percent::whole(50));
    EXPECT_EQ(doors.forecast, Hours::whole(24));
    EXPECT_EQ(doors.variance(), Hours::whole(-4));
    EXPECT_TRUE(doors.over());
    // Base and trips have not begun: as bid.
    EXPECT_EQ(house.forecast, Hours::whole(40));
    EXPECT_EQ(house.used, Hours::whole(12));
    EXPECT_EQ(house.bid, Hours::whole(36));
    // 10 of 36 bid hours are earned: 27.78 %.
    EXPECT_EQ(house.done, Percent::basisPoints(2778));
    EXPECT_EQ(house.profitLost(Money::dollars(50)), Money::dollars(200));
}

TEST(HouseProgress, TrustsTicksBeforeUnitsBeforeWhatIsSaid) {
    const std::vector counted{
        timeAt(0, lena, PieceOfWork::doors, Hours::whole(8), Quantity::count(10))};
    const DoneSaid ticked{PieceOfWork::doors, Percent::whole(40), DoneBy::ticks};
    const DoneSaid said{PieceOfWork::doors, Percent::whole(80), DoneBy::said};
    for (const auto& both : {std::vector{said, ticked}, std::vector{ticked, said}})
        EXPECT_EQ(houseProgress(bids, counted, both).works.front().done, Percent::whole(40));
    const WorkProgress byUnits = houseProgress(bids, counted, {said}).works.front();
    EXPECT_EQ(byUnits.by, DoneBy::units);
    EXPECT_EQ(byUnits.done, Percent::whole(50)) << "10 of 20";
}

TEST(HouseProgress, WhatIsSaidCountsWhereNothingElseDoes) {
    const std::vector entries{timeAt(0, lena, PieceOfWork::doors, Hours::whole(8))};
    const auto house = houseProgress(
        bids, entries, {{PieceOfWork::doors, Percent::whole(80), DoneBy::said}});
    EXPECT_EQ(house.works.front().by, DoneBy::said);
    EXPECT_EQ(house.works.front().forecast, Hours::whole(10)) << "8 h / 80 % [calc: BAC / CPI]";
    EXPECT_EQ(
        houseProgress(bids, entries, {{PieceOfWork::doors, Percent::whole(180)}}).works[0].done,
        Percent::hundred());
}

TEST(HouseProgress, AFinishedHouseTookWhatItTook) {
    auto house = houseProgress(bids,
        {timeAt(0, lena, PieceOfWork::doors, Hours::whole(8), Quantity::count(10)),
            timeAt(1, lena, PieceOfWork::doors, Hours::whole(2), {}, TimeKind::waiting)});
    ASSERT_GT(house.forecast, house.used);
    finishProgress(house);
    EXPECT_EQ(house.forecast, Hours::whole(10));
    EXPECT_EQ(house.used, Hours::whole(10));
    EXPECT_EQ(house.lost, Hours::whole(2));
    EXPECT_EQ(house.bid, Hours::whole(36));
    EXPECT_EQ(house.done, Percent::hundred());
    for (const WorkProgress& work : house.works) {
        EXPECT_EQ(work.by, DoneBy::finished);
        EXPECT_EQ(work.forecast, work.used);
    }
}

TEST(HouseProgress, TakesTheFirstTenthAsBid) {
    // One of 20 doors in 4 hours: 80 hours would be shouting; 4 + 19 of the bid.
    const auto house = houseProgress(
        bids, {timeAt(0, lena, PieceOfWork::doors, Hours::whole(4), Quantity::count(1))});
    EXPECT_EQ(house.works.front().forecast, Hours::whole(23));
}

TEST(HouseProgress, KnowsNoShareWithoutUnits) {
    auto house = houseProgress(bids, {timeAt(0, lena, PieceOfWork::doors, Hours::whole(8))});
    EXPECT_EQ(house.works.front().by, DoneBy::unknown);
    EXPECT_EQ(house.works.front().forecast, Hours::whole(20));
    house = houseProgress(bids, {timeAt(0, lena, PieceOfWork::doors, Hours::whole(23))});
    EXPECT_EQ(house.works.front().forecast, Hours::whole(23));
}

TEST(HouseProgress, WhatIsDoneTookWhatItTook) {
    auto house = houseProgress(
        bids, {timeAt(0, lena, PieceOfWork::doors, Hours::whole(16), Quantity::count(21))});
    EXPECT_EQ(house.works.front().done, Percent::hundred());
    EXPECT_EQ(house.works.front().forecast, Hours::whole(16));
    ASSERT_EQ(house.notes.size(), 1U);
    EXPECT_EQ(house.notes.front(), "Doors: 21 finished, but 20 were bid.");
    EXPECT_EQ(house.profitLost(Money::dollars(50)), Money::dollars(-200));
}

TEST(HouseProgress, HoldsTravelAgainstTripsAndLosesTheRest) {
    const auto house = houseProgress(bids,
        {timeAt(0, lena, PieceOfWork::doors, Hours::whole(1), {}, TimeKind::travel),
            timeAt(0, lena, PieceOfWork::doors, Hours::whole(2), {}, TimeKind::waiting),
            timeAt(0, lena, PieceOfWork::doors, Hours::whole(3), {}, TimeKind::callback),
            timeAt(0, lena, PieceOfWork::crown, Hours::whole(5))});
    EXPECT_EQ(house.works[2].used, Hours::whole(1));
    EXPECT_EQ(house.lost, Hours::whole(5));
    ASSERT_EQ(house.works.size(), 4U);
    EXPECT_EQ(house.works[3].work, PieceOfWork::crown);
    EXPECT_EQ(house.works[3].forecast, Hours::whole(5)) << "nobody bid it: all of it is over";
    EXPECT_EQ(house.used, Hours::whole(11));
    EXPECT_EQ(house.forecast, Hours::whole(36 + 5 + 5));
}

TEST(HouseProgress, CountsJambExtensionsForNoWindow) {
    TimeEntry entry = timeAt(0, lena, PieceOfWork::windows, Hours::whole(2), Quantity::count(4));
    entry.task = Task::jambExtension;
    const auto house = houseProgress({bidFor(PieceOfWork::windows, 10, 10)}, {entry});
    EXPECT_EQ(house.works.front().unitsDone, Quantity());
    EXPECT_EQ(house.works.front().used, Hours::whole(2));
}

TEST(TroubleFirst, PutsTheLargestLossOnTop) {
    std::vector<HouseTrouble> houses{{lot12, Money::dollars(10), {}},
        {lot14, Money::dollars(300), {}}, {Id<House>(33), Money::dollars(-50), {}},
        {Id<House>(30), Money::dollars(10), {}}};
    troubleFirst(houses);
    EXPECT_EQ(houses[0].house, lot14);
    EXPECT_EQ(houses[1].house, Id<House>(30));
    EXPECT_EQ(houses[2].house, lot12);
    EXPECT_EQ(houses[3].house, Id<House>(33));
}

TEST(HouseProgress, HoldsNoExtrasAgainstTheBid) {
    const auto without = houseProgress(
        bids, {timeAt(0, lena, PieceOfWork::base, Hours::whole(3), Quantity::count(150))});
    const auto with = houseProgress(bids,
        {timeAt(0, lena, PieceOfWork::base, Hours::whole(3), Quantity::count(150)),
            timeAt(1, lena, PieceOfWork::extras, Hours::whole(5), {})});
    EXPECT_EQ(with.forecast, without.forecast);
    EXPECT_EQ(with.used, without.used);
    EXPECT_EQ(with.profitLost(Money::dollars(50)), Money());
    const auto extras = std::ranges::find(with.works, PieceOfWork::extras, &WorkProgress::work);
    ASSERT_NE(extras, with.works.end()) << "they still have their own line";
    EXPECT_EQ(extras->used, Hours::whole(5));
}
