// SPDX-License-Identifier: GPL-3.0-or-later
#include "review/comparison.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

using namespace miterbook;

namespace {

/// A house of doors and base whose hours are `percent` of the bid's 20 and 10; $50 an hour.
HouseResult houseOf(int plan, int percent, int year = 2026, int callbacks = 0) {
    HouseResult house;
    house.plan = Id<Plan>(plan);
    house.builder = Id<Builder>(plan % 2 + 1);
    house.finished = Date{std::chrono::year(year), std::chrono::May, std::chrono::day(4)};
    house.callbacks = callbacks;
    WorkResult doors{PieceOfWork::doors, Hours::whole(20), Hours::minutes(12 * percent),
        Quantity::count(16), Money::dollars(2000), Money::dollars(2000), Money::dollars(1600), {}};
    doors.cost = Money::dollars(600) + Money::dollars(10) * percent;
    WorkResult base{PieceOfWork::base, Hours::whole(10), Hours::minutes(6 * percent),
        Quantity::count(500), Money::dollars(900), Money::dollars(900), Money::dollars(800), {}};
    base.cost = Money::dollars(300) + Money::dollars(5) * percent;
    for (const WorkResult& work : {doors, base}) {
        house.works.push_back(work);
        house.bid += work.bid;
        house.used += work.used;
        house.price += work.price;
        house.cost += work.cost;
    }
    return house;
}

const GroupResult& groupOf(const std::vector<GroupResult>& groups, std::int64_t key) {
    return *std::ranges::find(groups, key, &GroupResult::key);
}

} // namespace

TEST(Comparison, AddsUpPlansBestFirst) {
    const auto plans = compareHouses(
        {houseOf(1, 120), houseOf(1, 140), houseOf(2, 90), houseOf(2, 90)}, CompareBy::plan);
    ASSERT_EQ(plans.size(), 2U);
    EXPECT_EQ(plans[0].key, 2);
    const GroupResult& slow = plans[1];
    EXPECT_EQ(slow.houses, 2);
    EXPECT_EQ(slow.used, Hours::whole(78));
    // [calc] 2,900 - 900 - 15 x 120 = 200 and 2,900 - 900 - 15 x 140 = -100.
    EXPECT_EQ(slow.profit(), Money::dollars(100));
    EXPECT_EQ(slow.profitPerHouse(), Money::dollars(50));
    EXPECT_EQ(slow.profitPerHour(), Money::cents(128));
    EXPECT_NEAR(slow.hoursPerOpening, 26.0 / 16, 1e-12);
    EXPECT_NEAR(slow.hoursPer100Base, 13.0 / 5, 1e-12);
    EXPECT_NEAR(slow.overrun, .3, 1e-12);
    EXPECT_NEAR(slow.overrunSpread, .1 * std::sqrt(2.0), 1e-12);
}

TEST(Comparison, GroupsByBuilderAndYear) {
    const std::vector houses{houseOf(1, 100, 2025), houseOf(2, 100, 2026), houseOf(3, 100, 2026)};
    EXPECT_EQ(groupOf(compareHouses(houses, CompareBy::builder), 2).houses, 2);
    EXPECT_EQ(groupOf(compareHouses(houses, CompareBy::year), 2026).houses, 2);
    EXPECT_EQ(groupOf(compareHouses(houses, CompareBy::year), 2025).houses, 1);
    EXPECT_TRUE(compareHouses({}, CompareBy::plan).empty());
}

TEST(Comparison, ShrinksWhatOneHouseSays) {
    std::vector<HouseResult> houses{houseOf(9, 150)};
    for (const int percent : {96, 104, 100, 92, 108, 100, 98, 102})
        houses.push_back(houseOf(1 + percent % 2, percent));
    const auto plans = compareHouses(houses, CompareBy::plan);
    const GroupResult& once = groupOf(plans, 9);
    EXPECT_NEAR(once.overrun, .5, 1e-12);
    EXPECT_LT(once.expected.mean, .5);
    EXPECT_GT(once.expected.mean, 0);
    EXPECT_GT(once.expected.error, 0);
}

TEST(Comparison, ExpectsAlikeOfPlansThatScatterAlike) {
    std::vector<HouseResult> houses;
    for (const int plan : {1, 2}) {
        for (const int percent : {80, 100, 120})
            houses.push_back(houseOf(plan, percent + plan));
    }
    const auto plans = compareHouses(houses, CompareBy::plan);
    EXPECT_NEAR(groupOf(plans, 1).expected.mean, groupOf(plans, 2).expected.mean, 1e-9)
        << "nothing between them but scatter";
}

TEST(Comparison, ExpectsCallbacks) {
    // [calc] 3 days over 4 houses: .75 for one; plan 1 (3 + .75) / (2 + 1), plan 2 (0 + .75) / 3.
    const auto plans = compareHouses(
        {houseOf(1, 100, 2026, 2), houseOf(1, 100, 2026, 1), houseOf(2, 100), houseOf(2, 100)},
        CompareBy::plan);
    EXPECT_NEAR(groupOf(plans, 1).callbacks, 1.25, 1e-12);
    EXPECT_NEAR(groupOf(plans, 2).callbacks, .25, 1e-12);
}

TEST(Losses, SayWhichPieceOfWorkLosesWhere) {
    // [calc] doors lose over 140 % (2,000 = 600 + 10 x 140), base over 120 % (900 = 300 + 5 x 120).
    const auto list = losses({houseOf(1, 130), houseOf(1, 150), houseOf(2, 145), houseOf(3, 90)});
    ASSERT_EQ(list.size(), 3U);
    EXPECT_EQ(list[0].plan, Id<Plan>(1));
    EXPECT_EQ(list[0].work, PieceOfWork::base);
    EXPECT_EQ(list[0].lost, Money::dollars(50 + 150));
    EXPECT_EQ(list[0].perHouse(), Money::dollars(100));
    EXPECT_EQ(list[0].over, Hours::whole(8));
    EXPECT_EQ(list[0].houses, 2);
    EXPECT_EQ(list[1].plan, Id<Plan>(2));
    EXPECT_EQ(list[1].lost, Money::dollars(125));
    EXPECT_EQ(list[2].work, PieceOfWork::doors);
    EXPECT_EQ(list[2].lost, Money::dollars(50));
}
