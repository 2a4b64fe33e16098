// SPDX-License-Identifier: GPL-3.0-or-later
#include "hours/earned_value.h"

#include <gtest/gtest.h>

using namespace miterbook;

TEST(EarnedValue, OfThePublishedProject) {
    // [pub] R package PRA, documentation: BAC 100,000, EV 35,000, AC 36,000 -> CPI .9722222.
    const EarnedValue value{100'000, 35'000, 36'000};
    EXPECT_NEAR(value.index().value(), .9722222, 5e-8);
    EXPECT_NEAR(value.atCompletion(Forecast::asSoFar).value(), 100'000 / .9722222, 5e-3); // [calc]
}

TEST(EarnedValue, AtCompletionByBothWays) {
    // [pub] R package PRA, documentation: CPI .83 -> EAC 120,481.9; AC 63,000, the rest as
    // planned -> 128,000.
    EXPECT_NEAR(
        (EarnedValue{100'000, 83, 100}).atCompletion(Forecast::asSoFar).value(), 120'481.9, .05);
    EXPECT_DOUBLE_EQ(
        (EarnedValue{100'000, 35'000, 63'000}).atCompletion(Forecast::asBid).value(), 128'000);
}

TEST(EarnedValue, OfHoursAtAHundredDollars) {
    // [pub] What's in Earned Value Management, part IV: 100 h planned, 110 spent, 10 to go at $100:
    // EV 9,166.67, EAC 12,000, VAC -2,000.
    const double earned = 100.0 * 100 * 110 / 120;
    EXPECT_NEAR(earned, 9'166.67, .005);
    const EarnedValue value{10'000, earned, 11'000};
    EXPECT_NEAR(value.atCompletion(Forecast::asSoFar).value(), 12'000, 1e-6);
    EXPECT_NEAR(value.variance(Forecast::asSoFar).value(), -2'000, 1e-6);
}

TEST(EarnedValue, SaysNothingBeforeThereIsAnything) {
    const EarnedValue fresh{10'000, 0, 0};
    EXPECT_EQ(fresh.index(), std::nullopt);
    EXPECT_EQ(fresh.atCompletion(Forecast::asSoFar), std::nullopt);
    EXPECT_EQ(fresh.variance(Forecast::asSoFar), std::nullopt);
    EXPECT_DOUBLE_EQ(fresh.atCompletion(Forecast::asBid).value(), 10'000);
}
