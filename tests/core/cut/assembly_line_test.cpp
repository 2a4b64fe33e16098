// SPDX-License-Identifier: GPL-3.0-or-later
#include "cut/assembly_line.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <random>

using namespace miterbook;

namespace {

/// When each corner starts, straight from the recurrence: start(k) = max(start(k-1) + a,
/// start(k-N) + a + d).
std::vector<double> starts(int corners, const CornerWork& work) {
    std::vector<double> start;
    for (int k = 0; k < corners; ++k) {
        double at = k == 0 ? 0.0 : start.back() + work.makeUp;
        if (k >= work.clamps)
            at = std::max(
                at, start[static_cast<std::size_t>(k - work.clamps)] + work.makeUp + work.dwell);
        start.push_back(at);
    }
    return start;
}

} // namespace

TEST(AssemblyRun, FollowsTheRecurrence) {
    std::mt19937 random(11);
    for (int round = 0; round < 100; ++round) {
        const CornerWork work{1.0 + random() % 4, static_cast<double>(random() % 40),
            1 + static_cast<int>(random() % 16)};
        std::vector<int> corners;
        int all = 0;
        for (int i = 0; i < 20; ++i) {
            corners.push_back(random() % 3 == 0 ? 2 : 4);
            all += corners.back();
        }
        const auto start = starts(all, work);
        const auto times = runAssembly(corners, work);
        std::size_t k = 0;
        for (std::size_t i = 0; i < corners.size(); ++i) {
            EXPECT_DOUBLE_EQ(times[i].begun, start[k]);
            k += static_cast<std::size_t>(corners[i]);
            EXPECT_DOUBLE_EQ(times[i].made, start[k - 1] + work.makeUp);
            EXPECT_DOUBLE_EQ(times[i].off, start[k - 1] + work.makeUp + work.dwell);
        }
    }
}

TEST(AssemblyRun, ComesToTheLongRunRate) {
    const CornerWork work{2, 30, 4};
    const auto times = runAssembly(std::vector<int>(200, 4), work);
    EXPECT_DOUBLE_EQ(minutesPerCorner(work), 8); // (2 + 30) / 4 [calc]
    EXPECT_NEAR(times.back().made / 800, 8, 0.05);
    EXPECT_DOUBLE_EQ(setsPerHour(work, 4), 60.0 / 32);
    EXPECT_DOUBLE_EQ(times.front().off, 4 * 2 + 30); // four clamps: none is waited for
}

TEST(AssemblyRun, NeverWaitsWithEnoughClamps) {
    // N = ceil(1 + d / a) [calc]; yellow glue at 2 minutes a corner and half an hour's dwell comes
    // to the sixteen that crews carry [common practice].
    EXPECT_EQ(clampsThatNeverWait({2, 30, 1}), 16);
    EXPECT_EQ(clampsThatNeverWait({1, 3, 1}), 4); // free when the fourth corner is done
    std::mt19937 random(5);
    for (int round = 0; round < 100; ++round) {
        CornerWork work{1.0 + random() % 5, static_cast<double>(random() % 30), 1};
        work.clamps = clampsThatNeverWait(work);
        EXPECT_DOUBLE_EQ(runAssembly({40}, work).front().made, 40 * work.makeUp);
        if (work.clamps > 1) {
            --work.clamps;
            EXPECT_GT(runAssembly({40}, work).front().made, 40 * work.makeUp);
        }
    }
}

TEST(AssemblyRun, PassesOverASetWithoutCorners) {
    const auto times = runAssembly({4, 0, 2}, {1, 0, 4});
    EXPECT_EQ(times[1], (SetTimes{4, 4, 4}));
    EXPECT_DOUBLE_EQ(times[2].begun, 4);
}

TEST(Fasteners, FollowTheCasingWidth) {
    const Length over = Length::sixteenths(56); // 3 1/2 [common practice]
    EXPECT_EQ(fastenersPerCorner(Length::sixteenths(56), over), 0);
    EXPECT_EQ(fastenersPerCorner(Length::sixteenths(60), over), 1);
    EXPECT_EQ(fastenersPerCorner(Length::sixteenths(72), over), 1);
    EXPECT_EQ(fastenersPerCorner(Length::inches(5), over), 2);
    EXPECT_EQ(fastenersPerCorner(Length::inches(2), {}), 1); // yellow glue: at any width
}

TEST(SetCost, CountsHandsAndGoods) {
    WayOfJoining way;
    way.corner = {2, 30, 4};
    way.fastenerMinutes = 1;
    way.centsPerCorner = 5;
    way.fastenerCents = 10;
    way.fastenerOver = Length::inches(3);
    const SetCost plain = setCost(way, 4, Length::inches(3), 6000);
    EXPECT_FALSE(plain.fastened);
    EXPECT_DOUBLE_EQ(plain.minutes, 8);
    EXPECT_DOUBLE_EQ(plain.cents, 8 * 100 + 4 * 5);
    const SetCost wide = setCost(way, 4, Length::inches(5), 6000);
    EXPECT_TRUE(wide.fastened);
    EXPECT_DOUBLE_EQ(wide.minutes, 12);
    EXPECT_DOUBLE_EQ(wide.cents, 12 * 100 + 4 * 5 + 4 * 2 * 10);
    EXPECT_EQ(wide.clamps, 11);
}
