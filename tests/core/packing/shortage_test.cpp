// SPDX-License-Identifier: GPL-3.0-or-later
#include "packing/check.h"
#include "packing/solve.h"

#include <gtest/gtest.h>

using namespace miterbook::packing;

namespace {

Solution solved(const Problem& problem) {
    Budget budget(100'000);
    return solve(problem, budget);
}

TEST(Shortage, NamesPiecesLongerThanEveryStick) {
    Problem problem;
    problem.sticks = {{100, 10, std::nullopt}, {150, 20, 0}};
    problem.pieces = {{40, 2}, {101, 3}, {100, 1}};
    const Solution solution = solved(problem);
    EXPECT_EQ(fault(problem, solution.plan).value_or(""), "");
    EXPECT_EQ(solution.plan.missing, (std::vector<Share>{{1, 3}}));
    EXPECT_EQ(solution.plan.cost, 20) << "the rest is cut all the same";
    EXPECT_EQ(solution.bound, 20);
    EXPECT_FALSE(solution.proven);
}

TEST(Shortage, SaysWhatLimitedSticksCannotGive) {
    Problem problem;
    problem.sticks = {{100, 10, 2}};
    problem.pieces = {{60, 3}, {40, 1}};
    const Solution solution = solved(problem);
    EXPECT_EQ(fault(problem, solution.plan).value_or(""), "");
    EXPECT_EQ(solution.plan.missing, (std::vector<Share>{{0, 1}}));
    EXPECT_EQ(solution.bound, 0);
    EXPECT_FALSE(solution.proven);
}

TEST(Shortage, NoSticksAtAll) {
    Problem problem;
    problem.pieces = {{60, 3}, {40, 1}};
    EXPECT_EQ(solved(problem).plan.missing.size(), 2U);
    problem.sticks = {{100, 10, 0}};
    EXPECT_EQ(solved(problem).plan.missing.size(), 2U);
    EXPECT_EQ(quickPlan(problem).plan.missing.size(), 2U);
}

// Longest first would put 60 and 30 together; only 60 + 40 and 50 + 30 + 20 cut everything.
TEST(Shortage, FindsTheOneWayThatFits) {
    Problem problem;
    problem.sticks = {{100, 10, 2}};
    problem.pieces = {{60, 1}, {50, 1}, {40, 1}, {30, 1}, {20, 1}};
    const Solution solution = solved(problem);
    EXPECT_TRUE(solution.plan.complete());
    EXPECT_TRUE(solution.proven);
    EXPECT_EQ(solution.plan.cost, 20);
}

TEST(Shortage, LimitedCheapSticksBeforeUnlimitedDearOnes) {
    Problem problem;
    problem.sticks = {{100, 0, 1}, {100, 3, 2}, {100, 10, std::nullopt}};
    problem.pieces = {{80, 5}};
    const Solution solution = solved(problem);
    EXPECT_EQ(solution.plan.cost, 0 + 2 * 3 + 2 * 10);
    EXPECT_TRUE(solution.proven);
}

TEST(Shortage, FreeSticksWithoutLimitCostNothing) {
    Problem problem;
    problem.sticks = {{100, 0, std::nullopt}};
    problem.pieces = {{80, 5}, {10, 7}};
    const Solution solution = solved(problem);
    EXPECT_EQ(solution.plan.cost, 0);
    EXPECT_TRUE(solution.proven);
}

// A good offcut at its own worth is left alone when a bought stick has room anyway.
TEST(Shortage, GoodOffcutsAreNotBurntForNothing) {
    Problem problem;
    problem.sticks = {{192, 1000, std::nullopt}, {90, 300, 1}};
    problem.pieces = {{100, 1}, {80, 1}};
    EXPECT_EQ(solved(problem).plan.patterns.size(), 1U);
    problem.sticks[1].price = 0;
    problem.salvage = {48, 4, 1}; // keeping 92 of the long one is worth 368
    const Solution solution = solved(problem);
    EXPECT_EQ(solution.plan.patterns.size(), 2U);
    EXPECT_EQ(solution.plan.cost, 1000 - 368);
}

} // namespace
