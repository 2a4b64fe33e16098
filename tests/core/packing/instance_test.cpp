// SPDX-License-Identifier: GPL-3.0-or-later
#include "packing/instance.h"

#include "packing/check.h"
#include "packing/grid.h"

#include <gtest/gtest.h>

using namespace miterbook::packing;

namespace {

Problem sample() {
    Problem problem;
    problem.sticks = {{97, 500, std::nullopt}, {145, 700, std::nullopt}, {49, 0, 2}};
    problem.pieces = {{22, 3}, {46, 1}, {22, 2}, {10, 0}, {200, 4}};
    problem.kerf = 2;
    problem.trim = 1;
    return problem;
}

// (22 + 2, 46 + 2) have 24 in common: widths 2 and 1, capacities (97 - 1 + 2) / 24 = 4 and so on.
TEST(Instance, FoldsKerfAndTrimInAndDividesByTheCommonFactor) {
    const Problem problem = sample();
    const Instance instance(problem);
    EXPECT_EQ(instance.widths(), (Counts{2, 1}));
    EXPECT_EQ(instance.demand(), (Counts{1, 5}));
    ASSERT_EQ(instance.bins().size(), 3U);
    EXPECT_EQ(instance.bins()[0].capacity, 6);
    EXPECT_EQ(instance.bins()[1].capacity, 4);
    EXPECT_EQ(instance.bins()[2].capacity, 2);
    EXPECT_EQ(instance.bins()[2].available, 2);
    EXPECT_TRUE(instance.bins()[2].limited);
    EXPECT_EQ(instance.priceStep(), 100);
}

TEST(Instance, DropsSticksThatALongerOneReplacesAtNoHigherPrice) {
    Problem problem = sample();
    problem.sticks.push_back({120, 700, std::nullopt});
    problem.sticks.push_back({120, 699, std::nullopt});
    problem.sticks.push_back({20, 1, std::nullopt}); // too short for any piece
    problem.sticks.push_back({96, 400, 0});
    EXPECT_EQ(Instance(problem).bins().size(), 4U);
    problem.salvage = {10, 1, 1};
    EXPECT_EQ(Instance(problem).bins().size(), 5U) << "a remainder may pay for the difference";
}

TEST(Instance, CreditsARemainderButNeverMoreThanThePrice) {
    Problem problem = sample();
    problem.salvage = {20, 10, 3};
    const Instance instance(problem);
    // 145 - 1 - 4 * 24 = 48 left: 160 cents; 5 * 24 leaves 24: 80; all six leave nothing.
    EXPECT_EQ(instance.cost(0, 4), 700 - 160);
    EXPECT_EQ(instance.cost(0, 5), 700 - 80);
    EXPECT_EQ(instance.cost(0, 6), 700);
    problem.salvage = {25, 10, 3};
    EXPECT_EQ(instance.cost(0, 5), 700) << "24 is too short to keep";
    problem.salvage = {20, 1000, 3};
    EXPECT_EQ(instance.cost(0, 4), 0);
}

TEST(Instance, HandsPiecesOfEqualLengthBackByTheirOwnNames) {
    const Problem problem = sample();
    const Instance instance(problem);
    Packing packing;
    packing.columns = {{{0, {{0, 1}, {1, 4}}, 700}, 1}, {{2, {{1, 1}}, 0}, 1}};
    packing.missing = {0, 0};
    packing.cost = 700;
    const Plan plan = instance.plan(packing);
    EXPECT_EQ(fault(problem, plan).value_or(""), "");
    EXPECT_EQ(plan.missing, (std::vector<Share>{{4, 4}}));
    ASSERT_EQ(plan.patterns.size(), 2U);
    EXPECT_EQ(plan.patterns[0].shares, (std::vector<Share>{{1, 1}, {0, 3}, {2, 1}}));
    EXPECT_EQ(plan.patterns[1].shares, (std::vector<Share>{{2, 1}}));
}

TEST(Instance, SplitsARepeatedPatternWhereNamesRunOut) {
    Problem problem;
    problem.sticks = {{100, 5, std::nullopt}};
    problem.pieces = {{50, 3}, {50, 3}};
    const Instance instance(problem);
    Packing packing;
    packing.columns = {{{0, {{0, 2}}, 5}, 3}};
    packing.missing = {0};
    packing.cost = 15;
    const Plan plan = instance.plan(packing);
    EXPECT_EQ(fault(problem, plan).value_or(""), "");
    EXPECT_EQ(plan.patterns.size(), 3U); // two of the first, one of each, two of the second
}

TEST(Grid, IsExactWhereTheTableStaysSmall) {
    const Problem problem = sample();
    const Instance instance(problem);
    const Grid grid(instance, 1'000'000);
    EXPECT_TRUE(grid.exact());
    EXPECT_EQ(grid.widths(), instance.widths());
}

// Rounded down: what fits fits on the grid too, and a number of cells never claims too much.
TEST(Grid, NeverMakesAPieceLonger) {
    Problem problem;
    problem.sticks = {{10'000'019, 5, std::nullopt}};
    problem.pieces = {{3'333'331, 1}, {1'000'003, 1}, {17, 1}};
    const Instance instance(problem);
    const Grid grid(instance, 60'000);
    ASSERT_FALSE(grid.exact());
    EXPECT_LE(grid.capacity(instance.longestCapacity()), 10'000);
    for (std::size_t kind = 0; kind < instance.kinds(); ++kind)
        EXPECT_LE(grid.leastWidth(grid.widths()[kind]), instance.widths()[kind]);
}

} // namespace
