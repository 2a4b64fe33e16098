// SPDX-License-Identifier: GPL-3.0-or-later
#include "packing/master.h"

#include "core/packing/brute_force.h"
#include "packing/exhaust.h"
#include "packing/quick.h"

#include <gtest/gtest.h>

using namespace miterbook::packing;

namespace {

constexpr std::int64_t noCutoff = 1'000'000'000;

StickLimits wide(const Instance& instance) {
    StickLimits limits;
    for (const Bin& bin : instance.bins()) {
        limits.lower.push_back(0);
        limits.upper.push_back(bin.available);
    }
    return limits;
}

// Pieces of 3 (20 times) and 5 (30 times) from 11: 20 sticks, as in the program by hand [calc].
Problem threesAndFives() {
    Problem problem;
    problem.sticks = {{11, 100, std::nullopt}};
    problem.pieces = {{3, 20}, {5, 30}};
    return problem;
}

TEST(Master, GeneratesTheColumnsThatItNeeds) {
    const Problem problem = threesAndFives();
    const Instance instance(problem);
    Master master(instance);
    Budget budget;
    master.ask(instance.demand(), wide(instance), {});
    ASSERT_EQ(master.solve(noCutoff, budget), Master::Outcome::solved);
    EXPECT_NEAR(master.objective(), 2000, 1e-6);
    EXPECT_EQ(master.bound(), 2000);
    EXPECT_NEAR(master.sticks().at(0), 20, 1e-6);
    EXPECT_FALSE(master.missesPieces());
}

TEST(Master, SaysWhenNothingCanBeBelowTheCutoff) {
    const Problem problem = threesAndFives();
    const Instance instance(problem);
    Master master(instance);
    Budget budget;
    master.ask(instance.demand(), wide(instance), {});
    EXPECT_EQ(master.solve(2000, budget), Master::Outcome::tooDear);
    EXPECT_GE(master.bound(), 2000);
    StickLimits few = wide(instance);
    few.upper[0] = 19;
    master.ask(instance.demand(), few, {});
    EXPECT_EQ(master.solve(100'000, budget), Master::Outcome::tooDear) << "19 are too few";
}

TEST(Master, MustBuyWhatTheLimitsSay) {
    const Problem problem = threesAndFives();
    const Instance instance(problem);
    Master master(instance);
    Budget budget;
    StickLimits many = wide(instance);
    many.lower[0] = 23;
    master.ask(instance.demand(), many, {});
    ASSERT_EQ(master.solve(noCutoff, budget), Master::Outcome::solved);
    EXPECT_EQ(master.bound(), 2300);
}

TEST(Master, ForbiddenColumnsAreNeitherUsedNorMade) {
    const Problem problem = threesAndFives();
    const Instance instance(problem);
    Master master(instance);
    Budget budget;
    const Column mixed{0, {{0, 1}, {1, 2}}, 100}; // one 5 and two 3s fill a stick
    master.ask(instance.demand(), wide(instance), {mixed});
    ASSERT_EQ(master.solve(noCutoff, budget), Master::Outcome::solved);
    EXPECT_GT(master.bound(), 2000);
    for (const auto& [column, value] : master.solution())
        EXPECT_FALSE(master.column(column) == mixed) << value;
}

TEST(Master, ForgettingColumnsKeepsTheAnswer) {
    const Problem problem = threesAndFives();
    const Instance instance(problem);
    Master master(instance);
    Budget budget;
    master.add({0, {{0, 1}}, 100});
    master.add({0, {{1, 1}}, 100});
    master.ask(instance.demand(), wide(instance), {});
    ASSERT_EQ(master.solve(noCutoff, budget), Master::Outcome::solved);
    const std::size_t before = master.columns();
    master.forget(master.duals(), 1);
    EXPECT_LT(master.columns(), before);
    master.ask(instance.demand(), wide(instance), {});
    ASSERT_EQ(master.solve(noCutoff, budget), Master::Outcome::solved);
    EXPECT_EQ(master.bound(), 2000);
}

// At no stop is the bound above the true optimum, and never below nothing.
TEST(Master, BoundsNeverExceedTheOptimum) {
    std::mt19937 random(31);
    for (int i = 0; i < 150; ++i) {
        const Problem problem = smallProblem(random, false, i % 3 == 0);
        const auto best = bruteForce(problem);
        ASSERT_TRUE(best);
        const Instance instance(problem);
        for (const std::int64_t work : {5, 20, 60, 200, 10'000}) {
            Master master(instance);
            Budget budget(work);
            master.ask(instance.demand(), wide(instance), {});
            const auto outcome = master.solve(noCutoff, budget);
            EXPECT_NE(outcome, Master::Outcome::tooDear) << i;
            EXPECT_LE(master.bound(), *best) << i << " after " << work;
        }
        EXPECT_LE(simpleBound(instance), *best) << i;
    }
}

TEST(Exhaust, ClosesWhatHoldsNothingBetter) {
    std::mt19937 random(37);
    const Progress silent;
    for (int i = 0; i < 60; ++i) {
        const Problem problem = smallProblem(random, false, false);
        const auto best = bruteForce(problem);
        const Instance instance(problem);
        Budget budget;
        Incumbent incumbent(instance, silent);
        incumbent.offer(quickPacking(instance, budget));
        Master master(instance);
        Exhaust exhaust(instance, master, incumbent, budget);
        EXPECT_TRUE(exhaust.run(wide(instance), 1'000'000)) << i;
        EXPECT_EQ(incumbent.packing().cost, best) << i;
    }
}

} // namespace
