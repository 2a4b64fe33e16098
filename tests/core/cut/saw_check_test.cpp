// SPDX-License-Identifier: GPL-3.0-or-later
#include "cut/savings.h"
#include "cut/saw_check.h"

#include <gtest/gtest.h>

using namespace miterbook;

namespace {

constexpr Length in(int whole, int thirtySeconds = 0) {
    return Length::inches(whole) + Length::thirtySeconds(thirtySeconds);
}

} // namespace

TEST(SawCorrection, IsWhatTheStopMustHaveMore) {
    const SawCorrection one = sawCorrection({{in(36), in(35, 31)}});
    EXPECT_EQ(one.add, Length::thirtySeconds(1));
    EXPECT_EQ(one.spread, Length());
    const SawCorrection three = sawCorrection(
        {{in(36), in(36, 2)}, {in(60), in(60, 1)}, {in(24), in(24, 3)}});
    EXPECT_EQ(three.add, -Length::thirtySeconds(2));
    EXPECT_EQ(three.spread, Length::thirtySeconds(2));
    EXPECT_EQ(three.cuts, 3);
    EXPECT_EQ(sawCorrection({}).add, Length());
}

TEST(AngleError, OfATenthAddsUpRoundAFrame) {
    // Two cuts of 45.1 close to 89.8; 3 1/4 x sqrt 2 x 0.2 degrees = .016 in, four corners .064
    // [calc].
    const AngleError error = angleError(90, 89.8, in(3, 8), 4);
    EXPECT_NEAR(error.perCut, 0.1, 1e-9);
    EXPECT_NEAR(error.cornerGap.toInches(), .01604, 1e-4);
    EXPECT_NEAR(error.lastCornerGap.toInches(), .06417, 1e-4);
    EXPECT_NEAR(angleError(90, 90.3, in(3, 8), 4).perCut, -0.15, 1e-9);
    EXPECT_EQ(angleError(90, 90, in(3), 4).lastCornerGap, Length());
}

TEST(BowedStick, TurnsTheEndThatLiesOnTheFence) {
    // A quarter in eight feet, 20 in of fence: 4 x .25 / 96 x (1 - 20/96) rad = .4725 degrees
    // [calc].
    EXPECT_NEAR(bowedStickError(Length::sixteenths(4), in(96), in(20)), .4725, 1e-3);
    EXPECT_DOUBLE_EQ(bowedStickError(Length::sixteenths(4), in(96), in(96)), 0);
    EXPECT_DOUBLE_EQ(bowedStickError(in(1), {}, in(20)), 0);
}

TEST(BatchSavings, CountBothWaysOfWorking) {
    const BatchSavings savings = batchSavings(104, 12, 52, 0.5, 0.25);
    EXPECT_EQ(savings.byPiece.stopMoves, 104);
    EXPECT_EQ(savings.byPiece.tapePulls, 208);
    EXPECT_EQ(savings.stopMovesSaved(), 92);
    EXPECT_EQ(savings.tapePullsSaved(), 208 - 64);
    EXPECT_DOUBLE_EQ(savings.minutesSaved(), 92 * 0.5 + 144 * 0.25);
}
