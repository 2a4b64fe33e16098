// SPDX-License-Identifier: GPL-3.0-or-later
// The smaller parts: budget, greedy filling, the incumbent, exchanging pieces.
#include "packing/check.h"
#include "packing/consolidate.h"
#include "packing/greedy.h"
#include "packing/incumbent.h"
#include "packing/mend.h"
#include "packing/partial.h"

#include <gtest/gtest.h>

using namespace miterbook::packing;

namespace {

TEST(Budget, EndsWithItsWorkAndStaysEnded) {
    Budget budget(10);
    EXPECT_TRUE(budget.spend(9));
    EXPECT_FALSE(budget.spend(1));
    EXPECT_FALSE(budget.spend(0));
    EXPECT_EQ(budget.spent(), 10);
}

TEST(Budget, AsksNowAndThenAndNotAfterTheStop) {
    int asked = 0;
    Budget budget(Budget::noLimit, [&] { return ++asked == 3; });
    int steps = 0;
    while (budget.spend(100))
        ++steps;
    EXPECT_EQ(asked, 3);
    EXPECT_EQ(steps, 14) << "every 500 units";
    budget.spend(10'000);
    EXPECT_EQ(asked, 3);
}

TEST(Budget, APartIsBookedOnTheWhole) {
    Budget whole(2'000);
    Budget part = whole.part(100'000);
    while (part.spend(100))
        continue;
    EXPECT_TRUE(whole.exhausted());
    EXPECT_LE(part.spent(), 2'000);
}

Problem boards() {
    Problem problem;
    problem.sticks = {{100, 10, std::nullopt}, {60, 5, 1}};
    problem.pieces = {{55, 2}, {45, 3}, {30, 1}};
    return problem;
}

TEST(Greedy, FillsTheCheapestPerWidthFirst) {
    const Problem problem = boards();
    const Instance instance(problem);
    LargestFirst filler(instance);
    const Packing packing = fillGreedily(instance, Remaining(instance), filler);
    EXPECT_EQ(packing.missingWidth, 0);
    // A 55 for 5 on the short stick is cheapest per width; then 55 + 45, 45 + 45 and the 30.
    EXPECT_EQ(packing.columns.front().first.bin, 1U);
    EXPECT_EQ(packing.cost, 35);
}

TEST(Greedy, LeavesWhatFindsNoStick) {
    Problem problem = boards();
    problem.sticks = {{60, 5, 2}};
    const Instance instance(problem);
    LargestFirst filler(instance);
    const Packing packing = fillGreedily(instance, Remaining(instance), filler);
    EXPECT_EQ(packing.missing, (Counts{0, 3, 1}));
    EXPECT_EQ(packing.missingWidth, (3 * 45 + 30) / 5);
}

TEST(Partial, TakesAndTrims) {
    const Problem problem = boards();
    const Instance instance(problem);
    Partial partial{instance.demand(), {{1, 0}, {9, 1}}, {}};
    const Column column{0, {{0, 1}, {1, 1}}, 10};
    EXPECT_EQ(partial.repeats(column), 2);
    partial.take(column, 2);
    EXPECT_EQ(partial.demand, (Counts{0, 1, 1}));
    EXPECT_EQ(partial.limits.lower[0], 0);
    EXPECT_EQ(partial.limits.upper[0], 7);
    EXPECT_EQ(partial.fixed.cost, 20);
    EXPECT_EQ(partial.repeats(column), 0);
    EXPECT_EQ(partial.trimmed(instance, column).cuts,
        (std::vector<std::pair<int, std::int64_t>>{{1, 1}}));
    EXPECT_FALSE(partial.done());
}

Packing packingOf(std::int64_t cost, std::int64_t missing, std::size_t patterns) {
    Packing packing;
    packing.cost = cost;
    packing.missingWidth = missing;
    packing.missing = {0, 0, 0};
    for (std::size_t p = 0; p < patterns; ++p)
        packing.columns.push_back({{0, {{static_cast<int>(p), 1}}, 10}, 1});
    return packing;
}

TEST(Incumbent, PrefersLessMissingThenLessCostThenFewerPatterns) {
    const Problem problem = boards();
    const Instance instance(problem);
    int told = 0;
    const Progress progress = [&](const Plan&, std::int64_t) { ++told; };
    Incumbent incumbent(instance, progress);
    EXPECT_FALSE(incumbent.complete());
    EXPECT_TRUE(incumbent.offer(packingOf(10, 5, 1)));
    EXPECT_FALSE(incumbent.complete());
    EXPECT_TRUE(incumbent.offer(packingOf(50, 0, 2)));
    EXPECT_TRUE(incumbent.complete());
    EXPECT_FALSE(incumbent.offer(packingOf(20, 1, 1)));
    EXPECT_FALSE(incumbent.offer(packingOf(50, 0, 3)));
    EXPECT_TRUE(incumbent.offer(packingOf(50, 0, 1)));
    EXPECT_TRUE(incumbent.offer(packingOf(40, 0, 3)));
    EXPECT_EQ(incumbent.cutoff(), 40);
    incumbent.raiseBound(39);
    incumbent.raiseBound(20);
    EXPECT_EQ(incumbent.bound(), 39);
    EXPECT_FALSE(incumbent.proven());
    incumbent.raiseBound(40);
    EXPECT_TRUE(incumbent.proven());
    EXPECT_EQ(told, 6);
}

TEST(Incumbent, TidyMergesEqualColumns) {
    Packing packing;
    packing.columns = {
        {{0, {{1, 1}}, 10}, 1}, {{0, {{0, 1}}, 10}, 2}, {{0, {{1, 1}}, 10}, 3}, {{1, {}, 5}, 1}};
    tidy(packing);
    ASSERT_EQ(packing.columns.size(), 2U);
    EXPECT_EQ(packing.columns[1].second, 4);
}

TEST(Consolidation, CutsTwoSticksAlikeWhereTheyCanBe) {
    Problem problem;
    problem.sticks = {{100, 10, std::nullopt}};
    problem.pieces = {{50, 2}, {20, 4}};
    const Instance instance(problem);
    Packing packing;
    packing.columns = {{{0, {{0, 2}}, 10}, 1}, {{0, {{1, 4}}, 10}, 1}};
    packing.cost = 20;
    packing.missing = {0, 0};
    Budget budget;
    const Packing merged = Consolidation(instance, packing, budget).run();
    ASSERT_EQ(merged.columns.size(), 1U);
    EXPECT_EQ(merged.columns[0].second, 2);
    EXPECT_EQ(merged.cost, 20);
}

// 40 + 30 and 50 + 20 of 100: moved together, 40 + 30 + 20 and 50 leave 50 in one piece, and
// 50 + 30 + 20 and 40 even 60.
TEST(Consolidation, GathersTheRemainderOnOneStick) {
    Problem problem;
    problem.sticks = {{100, 10, std::nullopt}};
    problem.pieces = {{50, 1}, {40, 1}, {30, 1}, {20, 1}};
    const Instance instance(problem);
    Packing packing;
    packing.columns = {{{0, {{1, 1}, {2, 1}}, 10}, 1}, {{0, {{0, 1}, {3, 1}}, 10}, 1}};
    packing.cost = 20;
    packing.missing = {0, 0, 0, 0};
    Budget budget;
    const Packing gathered = Consolidation(instance, packing, budget).run();
    std::int64_t longest = 0;
    for (const auto& line : gathered.columns)
        longest = std::max(
            longest, instance.bins()[line.first.bin].capacity - instance.width(line.first));
    EXPECT_GE(longest, 5); // in tens
    EXPECT_EQ(gathered.columns.size(), 2U);
}

// A 60 from the rack holds what the two bought sticks have room for.
TEST(Consolidation, LeavesFreeSticksWholeWhereOthersHaveRoom) {
    Problem problem;
    problem.sticks = {{100, 10, std::nullopt}, {60, 0, 2}};
    problem.pieces = {{90, 1}, {70, 1}, {30, 1}, {10, 1}};
    const Instance instance(problem);
    Packing packing;
    packing.columns = {
        {{0, {{0, 1}}, 10}, 1}, {{0, {{1, 1}}, 10}, 1}, {{1, {{2, 1}, {3, 1}}, 0}, 1}};
    packing.cost = 20;
    packing.missing = {0, 0, 0, 0};
    Budget budget;
    const Packing spared = Consolidation(instance, packing, budget).run();
    EXPECT_EQ(spared.columns.size(), 2U);
    EXPECT_EQ(spared.cost, 20);
    EXPECT_EQ(fault(problem, instance.plan(spared)).value_or(""), "");
}

// Pieces stay where they are when a remainder that counts for something would be lost.
TEST(Consolidation, KeepsCreditedRemainders) {
    Problem problem;
    problem.sticks = {{100, 10, std::nullopt}};
    problem.pieces = {{50, 2}, {20, 4}};
    problem.salvage = {45, 1, 10};
    const Instance instance(problem);
    Packing packing; // all of one stick, and half of the next
    packing.columns = {
        {{0, {{0, 1}, {1, 2}}, 10}, 1}, {{0, {{0, 1}}, 5}, 1}, {{0, {{1, 2}}, 4}, 1}};
    packing.cost = 19;
    packing.missing = {0, 0};
    Budget budget;
    const Packing merged = Consolidation(instance, packing, budget).run();
    EXPECT_LE(merged.cost, 19);
    EXPECT_EQ(fault(problem, instance.plan(merged)).value_or(""), "");
}

// 60 + 30 + 10 and 50 + 50 need two sticks; the plan to start from uses three.
TEST(Mend, TakesSticksApartUntilOneIsSaved) {
    Problem problem;
    problem.sticks = {{100, 10, std::nullopt}};
    problem.pieces = {{60, 1}, {50, 2}, {30, 1}, {10, 1}};
    const Instance instance(problem);
    const Progress silent;
    Incumbent incumbent(instance, silent);
    Packing packing;
    packing.columns = {
        {{0, {{0, 1}}, 10}, 1}, {{0, {{1, 1}, {2, 1}}, 10}, 1}, {{0, {{1, 1}, {3, 1}}, 10}, 1}};
    packing.cost = 30;
    packing.missing = {0, 0, 0, 0};
    incumbent.offer(packing);
    Budget budget(100'000);
    Mend(instance, incumbent, budget).run(50'000);
    EXPECT_EQ(incumbent.packing().cost, 20);
    EXPECT_EQ(fault(problem, instance.plan(incumbent.packing())).value_or(""), "");
}

// An offcut is there once, in the part as in the whole.
TEST(Mend, UsesLimitedSticksNoOftenerThanTheyAreThere) {
    Problem problem;
    problem.sticks = {{100, 10, std::nullopt}, {60, 0, 1}};
    problem.pieces = {{60, 3}, {40, 3}};
    const Instance instance(problem);
    const Progress silent;
    Incumbent incumbent(instance, silent);
    Packing packing;
    packing.columns = {{{0, {{0, 1}}, 10}, 3}, {{0, {{1, 2}}, 10}, 1}, {{1, {{1, 1}}, 0}, 1}};
    packing.cost = 40;
    packing.missing = {0, 0};
    incumbent.offer(packing);
    Budget budget(100'000);
    Mend(instance, incumbent, budget).run(50'000);
    EXPECT_EQ(incumbent.packing().cost, 30);
    EXPECT_EQ(fault(problem, instance.plan(incumbent.packing())).value_or(""), "");
}

} // namespace
