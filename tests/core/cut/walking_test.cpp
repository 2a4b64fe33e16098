// SPDX-License-Identifier: GPL-3.0-or-later
#include "cut/walking.h"

#include <gtest/gtest.h>

#include <random>

using namespace miterbook;

namespace {

Spot feet(double x, double y) {
    return {Length::fromInches(x * 12), Length::fromInches(y * 12)};
}

const std::vector<Spot> room{feet(0, 0), feet(20, 0), feet(20, 16), feet(0, 16)};

/// The least walked from any point of a grid over the room.
double leastOnGrid(const std::vector<Carry>& carries) {
    double least = 1e18;
    for (int x = 0; x <= 80; ++x) {
        for (int y = 0; y <= 64; ++y)
            least = std::min(least, carryingDistance(feet(x / 4.0, y / 4.0), carries).toFeet());
    }
    return least;
}

} // namespace

TEST(CarryingDistance, IsThereAndBackForEachTrip) {
    const std::vector<Carry> carries{{feet(3, 4), 2}, {feet(0, 10), 1}};
    EXPECT_NEAR(carryingDistance(feet(0, 0), carries).toFeet(), 2 * 2 * 5 + 2 * 10, 1e-6);
    EXPECT_NEAR(distanceBetween(feet(1, 1), feet(4, 5)).toFeet(), 5, 1e-6);
}

TEST(BestSpot, WalksNoMoreThanAnyPointOfTheRoom) {
    std::mt19937 random(3);
    for (int round = 0; round < 60; ++round) {
        std::vector<Carry> carries;
        for (int i = 0; i < 12; ++i)
            carries.push_back({feet(random() % 60 - 20.0, random() % 60 - 20.0),
                1 + static_cast<int>(random() % 3)});
        const Spot best = bestSpot(room, carries);
        EXPECT_GE(best.x.toFeet(), -1e-6);
        EXPECT_LE(best.x.toFeet(), 20 + 1e-6);
        EXPECT_GE(best.y.toFeet(), -1e-6);
        EXPECT_LE(best.y.toFeet(), 16 + 1e-6);
        EXPECT_LE(carryingDistance(best, carries).toFeet(), leastOnGrid(carries) + 1e-3);
    }
}

TEST(BestSpot, IsTheMiddleWhenNothingIsCarried) {
    EXPECT_EQ(bestSpot(room, {}), feet(10, 8));
}
