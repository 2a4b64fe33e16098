// SPDX-License-Identifier: GPL-3.0-or-later
#include "packing/check.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

using namespace miterbook::packing;
using testing::HasSubstr;
using testing::Optional;

namespace {

// 96 and 144 long, kerf 1: the 144 takes 96 + 47 and nothing more.
Problem twoSticks() {
    Problem problem;
    problem.sticks = {{96, 500, std::nullopt}, {144, 700, 1}};
    problem.pieces = {{96, 1}, {47, 3}};
    problem.kerf = 1;
    return problem;
}

Plan goodPlan() {
    Plan plan;
    plan.patterns = {{1, 1, {{0, 1}, {1, 1}}}, {0, 1, {{1, 2}}}};
    plan.cost = 1200;
    return plan;
}

TEST(Check, AcceptsAPlanThatFitsToTheLastCut) {
    EXPECT_EQ(fault(twoSticks(), goodPlan()), std::nullopt);
}

TEST(Check, CountsTheKerfBetweenPieces) {
    Problem problem = twoSticks();
    problem.kerf = 2;
    EXPECT_THAT(fault(problem, goodPlan()), Optional(HasSubstr("Pattern 1 does not fit")));
    problem.kerf = 0;
    problem.trim = 1;
    EXPECT_EQ(fault(problem, goodPlan()), std::nullopt);
    problem.trim = 2;
    EXPECT_THAT(fault(problem, goodPlan()), Optional(HasSubstr("Pattern 1 does not fit")));
}

TEST(Check, CountsPiecesAndSticks) {
    Plan plan = goodPlan();
    plan.patterns[1].shares[0].count = 1;
    EXPECT_THAT(fault(twoSticks(), plan), Optional(HasSubstr("Piece 2 is cut a wrong number")));
    plan.missing = {{1, 1}};
    EXPECT_EQ(fault(twoSticks(), plan), std::nullopt);
    plan = goodPlan();
    plan.patterns[0].times = 2;
    EXPECT_THAT(fault(twoSticks(), plan), Optional(HasSubstr("Stick 2 is used more often")));
}

TEST(Check, RefusesWhatDoesNotExist) {
    Plan plan = goodPlan();
    plan.patterns[0].stick = 7;
    EXPECT_THAT(fault(twoSticks(), plan), Optional(HasSubstr("a stick that does not exist")));
    plan = goodPlan();
    plan.patterns[0].shares[0].piece = 9;
    EXPECT_THAT(fault(twoSticks(), plan), Optional(HasSubstr("a piece that does not exist")));
    plan = goodPlan();
    plan.patterns[0].times = 0;
    EXPECT_THAT(fault(twoSticks(), plan), Optional(HasSubstr("cut no times")));
    plan = goodPlan();
    plan.patterns.push_back({0, 1, {}});
    EXPECT_THAT(fault(twoSticks(), plan), Optional(HasSubstr("holds no piece")));
    plan = goodPlan();
    plan.missing = {{5, 1}};
    EXPECT_THAT(fault(twoSticks(), plan), Optional(HasSubstr("missing")));
}

TEST(Check, AddsUpTheCost) {
    Plan plan = goodPlan();
    plan.cost = 1199;
    EXPECT_THAT(fault(twoSticks(), plan), Optional(HasSubstr("add up to 1200")));
}

// The second pattern leaves 96 - 2 * 48 = 0, the first 144 - 145: nothing to credit. A longer
// stick leaves 24, worth 24 * 50 / 12 = 100 cents.
TEST(Check, CreditsKeepableRemainders) {
    Problem problem = twoSticks();
    problem.salvage = {24, 50, 12};
    EXPECT_EQ(fault(problem, goodPlan()), std::nullopt);
    problem.sticks[0].length = 120;
    Plan plan = goodPlan();
    plan.cost = 1100;
    EXPECT_EQ(fault(problem, plan), std::nullopt);
    problem.salvage.shortest = 25;
    EXPECT_THAT(fault(problem, plan), Optional(HasSubstr("add up to 1200")));
    problem.salvage = {24, 5000, 12};
    plan.cost = 700;
    EXPECT_EQ(fault(problem, plan), std::nullopt) << "never more than the stick cost";
}

} // namespace
