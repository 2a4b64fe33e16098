// SPDX-License-Identifier: GPL-3.0-or-later
#include "review/learned_rate.h"

#include <gtest/gtest.h>

#include <cmath>

using namespace miterbook;

namespace {

constexpr MinutesPerUnit anHour = MinutesPerUnit::whole(60);

/// A house that sets so many doors at so many minutes each.
RateSighting house(double minutesEach, int doors = 1000) {
    return {noDate, Quantity::count(doors), minutesEach * doors};
}

std::vector<RateSighting> houses(int count, double minutesEach) {
    return std::vector<RateSighting>(static_cast<std::size_t>(count), house(minutesEach));
}

/// What is seen when a house is like the middle one, so that the mean is `mean`.
double middleOf(double mean) {
    return mean / std::exp(.2 * .2 / 2);
}

} // namespace

TEST(LearnedRate, IsTheBooksWithoutHouses) {
    const LearnedRate learned = learnRate(anHour, {});
    EXPECT_NEAR(learned.minutes, 60, 1e-9);
    EXPECT_EQ(learned.houses, 0);
    // [calc] t(.95; 4) = 2.1318 [pub: NIST e-Handbook 1.3.6.7.2], spread .2.
    EXPECT_NEAR(learned.low, 60 * std::exp(-2.1318 * .2), 1e-3);
    EXPECT_NEAR(learned.high, 60 * std::exp(2.1318 * .2), 1e-3);
}

TEST(LearnedRate, WeighsTheBookAsOneLargeHouse) {
    // [calc] equal spreads: half way on the scale of logarithms for one house, 3/4 for three.
    const double seen = middleOf(66);
    EXPECT_NEAR(learnRate(anHour, houses(1, seen)).minutes, std::sqrt(60.0 * 66), .1);
    EXPECT_NEAR(learnRate(anHour, houses(3, seen)).minutes, 60 * std::pow(1.1, .75), .1);
    EXPECT_NEAR(learnRate(anHour, houses(200, seen)).minutes, 66, .1);
}

TEST(LearnedRate, TrustsSmallJobsLess) {
    const double large = learnRate(anHour, {house(middleOf(75), 40)}).minutes;
    const double small = learnRate(anHour, {house(middleOf(75), 2)}).minutes;
    EXPECT_GT(large, small);
    EXPECT_GT(small, 60);
}

TEST(LearnedRate, GrowsSurerWithHousesAndLessSoWithScatter) {
    const auto width = [](const LearnedRate& rate) { return rate.high / rate.low; };
    const auto few = learnRate(anHour, houses(3, 60));
    const auto many = learnRate(anHour, houses(12, 60));
    EXPECT_LT(width(many), width(few));
    auto scattered = houses(6, 48);
    for (const RateSighting& each : houses(6, 75))
        scattered.push_back(each);
    const auto wide = learnRate(anHour, scattered);
    EXPECT_GT(width(wide), width(many));
    EXPECT_GT(wide.houseSpread, many.houseSpread);
    EXPECT_LT(width(learnRate(anHour, houses(3, 60), {}, .5)), width(few));
}

TEST(LearnedRate, IsNotMovedFarByOneAbsurdEntry) {
    // 80 hours for a door; and a door in no time.
    for (const int others : {0, 1, 3, 5, 12}) {
        for (const double usual : {40.0, 60.0, 80.0}) {
            const auto before = houses(others, usual);
            const double rate = learnRate(anHour, before).minutes;
            const double bound = mostMoved(anHour, before);
            for (const double absurd : {4800.0, 1e9, .01}) {
                for (const int doors : {1, 20, 1000}) {
                    auto with = before;
                    with.push_back(house(absurd, doors));
                    const LearnedRate moved = learnRate(anHour, with);
                    EXPECT_LE(moved.minutes / rate, bound * (1 + 1e-9));
                    EXPECT_GE(moved.minutes / rate, 1 / bound * (1 - 1e-9));
                    EXPECT_EQ(moved.odd, 1);
                }
            }
        }
    }
}

TEST(LearnedRate, StatesItsBound) {
    EXPECT_NEAR(mostMoved(anHour, {}), std::exp(1.345 * .2), 1e-12); // 1.31
    // [calc] with five large houses that agree: exp(1.345 x .2 / 6), under 5 %.
    EXPECT_NEAR(mostMoved(anHour, houses(5, middleOf(60))), std::exp(1.345 * .2 / 6), 1e-3);
}

TEST(LearnedRate, DoesNotDependOnOrder) {
    std::vector<RateSighting> sightings{house(50, 10), house(90, 4), house(64, 18)};
    const LearnedRate one = learnRate(anHour, sightings);
    std::swap(sightings[0], sightings[2]);
    EXPECT_NEAR(learnRate(anHour, sightings).minutes, one.minutes, 1e-9);
}

TEST(RateTrend, LearnsHouseByHouseInOrderOfDates) {
    using namespace std::chrono;
    std::vector<RateSighting> sightings{house(70, 20), house(50, 20)};
    sightings[0].date = Date{year(2026), May, std::chrono::day(1)};
    sightings[1].date = Date{year(2025), May, std::chrono::day(1)};
    const auto trend = rateTrend(anHour, sightings);
    ASSERT_EQ(trend.size(), 2U);
    EXPECT_DOUBLE_EQ(trend[0].seen, 50);
    EXPECT_EQ(trend[0].learned.houses, 1);
    EXPECT_EQ(trend[1].learned, learnRate(anHour, {sightings[1], sightings[0]}));
}
