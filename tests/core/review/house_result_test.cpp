// SPDX-License-Identifier: GPL-3.0-or-later
#include "review/house_result.h"

#include <gtest/gtest.h>

using namespace miterbook;

namespace {

WorkBid bidFor(PieceOfWork work, int hours, int labour, int cost, int price, int units) {
    return {work, Hours::whole(hours), Money::dollars(labour), Quantity::count(units),
        Money::dollars(cost), Money::dollars(price)};
}

TimeEntry timeFor(PieceOfWork work, int hours, TimeKind kind = TimeKind::work) {
    TimeEntry entry;
    entry.work = work;
    entry.kind = kind;
    entry.time = Hours::whole(hours);
    return entry;
}

/// Doors bid at 20 h x $50 + $600; base at 10 h x $50 + $300.
HouseFacts facts() {
    HouseFacts facts;
    facts.crewRate = Money::dollars(50);
    facts.bids = {bidFor(PieceOfWork::doors, 20, 1000, 1600, 2000, 20),
        bidFor(PieceOfWork::base, 10, 500, 800, 900, 400)};
    return facts;
}

} // namespace

TEST(HouseResult, HoldsWhatItTookAgainstTheBid) {
    HouseFacts house = facts();
    house.entries = {timeFor(PieceOfWork::doors, 16), timeFor(PieceOfWork::base, 14)};
    const HouseResult result = houseResult(house);
    // [calc] doors 800 + 600 of 2,000; base 700 + 300 of 900.
    EXPECT_EQ(result.of(PieceOfWork::doors)->profit(), Money::dollars(600));
    EXPECT_EQ(result.of(PieceOfWork::doors)->bidProfit(), Money::dollars(400));
    EXPECT_EQ(result.of(PieceOfWork::base)->profit(), Money::dollars(-100));
    EXPECT_EQ(result.profit(), Money::dollars(500));
    EXPECT_EQ(result.bidProfit, Money::dollars(500));
    EXPECT_EQ(result.used, Hours::whole(30));
    EXPECT_EQ(result.profitPerHour(), Money::cents(1667));
    EXPECT_EQ(result.of(PieceOfWork::crown), nullptr);
}

TEST(HouseResult, PaysForWhatNobodyBid) {
    HouseFacts house = facts();
    TimeEntry later = timeFor(PieceOfWork::doors, 1, TimeKind::callback);
    later.date = Date{std::chrono::year(2026), std::chrono::May, std::chrono::day(4)};
    house.entries = {timeFor(PieceOfWork::doors, 20), timeFor(PieceOfWork::base, 10),
        timeFor(PieceOfWork::doors, 2, TimeKind::waiting),
        timeFor(PieceOfWork::doors, 1, TimeKind::callback),
        timeFor(PieceOfWork::base, 1, TimeKind::callback), later};
    house.backcharges = Money::dollars(80);
    house.materialOver = Money::dollars(40);
    const HouseResult result = houseResult(house);
    EXPECT_EQ(result.lost, Hours::whole(5));
    EXPECT_EQ(result.callbacks, 2) << "days, not entries";
    EXPECT_EQ(result.profit(), Money::dollars(500 - 5 * 50 - 80 - 40));
    EXPECT_EQ(result.bidProfit, Money::dollars(500));
}

TEST(HouseResult, TakesExtrasIn) {
    HouseFacts house = facts();
    house.extras = Money::dollars(400);
    house.extrasMaterial = Money::dollars(90);
    house.entries = {timeFor(PieceOfWork::extras, 4)};
    const HouseResult result = houseResult(house);
    EXPECT_EQ(result.of(PieceOfWork::extras)->profit(), Money::dollars(110));
    EXPECT_EQ(result.price, Money::dollars(3300));
    EXPECT_EQ(result.bidProfit, Money::dollars(500));
}

TEST(HouseResult, WithoutHoursHasNoRate) {
    EXPECT_EQ(houseResult(facts()).profitPerHour(), Money());
}
