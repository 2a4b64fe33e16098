// SPDX-License-Identifier: GPL-3.0-or-later
#include "packing/coarse.h"

#include "packing/check.h"
#include "packing/quick.h"
#include "packing/solve.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <numeric>

using namespace miterbook::packing;

namespace {

// So many lengths, all different, without a common factor.
Problem manyLengths(std::int64_t kinds, std::int64_t kerf) {
    Problem problem;
    problem.sticks = {
        {192'007, 1555, std::nullopt}, {144'001, 1104, std::nullopt}, {96'003, 736, 40}};
    for (std::int64_t i = 0; i < kinds; ++i)
        problem.pieces.push_back({5'000 + i * 1'800'001 / kinds / 10, 1 + i % 3});
    problem.kerf = kerf;
    return problem;
}

TEST(Coarse, RoundsEveryWidthTheRightWay) {
    const Problem problem = manyLengths(900, 125);
    const Instance instance(problem);
    for (const auto rounding : {Coarse::Rounding::up, Coarse::Rounding::down}) {
        const Coarse coarse(instance, 50, rounding);
        EXPECT_LE(coarse.problem().pieces.size(), 50U);
        EXPECT_GT(coarse.problem().pieces.size(), 25U);
        std::size_t kind = 0;
        for (const Piece& piece : coarse.problem().pieces) {
            std::int64_t left = piece.count;
            for (; left > 0; ++kind) {
                left -= instance.demand()[kind];
                if (rounding == Coarse::Rounding::up)
                    EXPECT_GE(piece.length, instance.widths()[kind]);
                else
                    EXPECT_LE(piece.length, instance.widths()[kind]);
            }
            EXPECT_EQ(left, 0);
        }
        EXPECT_EQ(kind, instance.kinds());
    }
}

TEST(Coarse, AnswersComeBackWhole) {
    const Problem problem = manyLengths(700, 0);
    const Instance instance(problem);
    const Coarse coarse(instance, 30, Coarse::Rounding::up);
    const Instance simpler(coarse.problem());
    Budget budget;
    const Packing packing = coarse.back(simpler, quickPacking(simpler, budget));
    EXPECT_EQ(packing.missingWidth, 0);
    EXPECT_EQ(fault(problem, instance.plan(packing)).value_or(""), "");
}

TEST(Coarse, ThousandsOfLengthsComeCloseToTheirBound) {
    const Problem problem = manyLengths(3000, 125);
    Budget budget(2'000'000);
    const Solution solution = solve(problem, budget);
    EXPECT_EQ(fault(problem, solution.plan).value_or(""), "");
    EXPECT_TRUE(solution.plan.complete());
    EXPECT_LE(solution.plan.cost * 100, solution.bound * 102);
}

// The linear program of so many would take twenty gigabytes.
TEST(Coarse, FiftyThousandLengths) {
    const Problem problem = manyLengths(50'000, 125);
    Budget budget(1'000'000);
    const Solution solution = solve(problem, budget);
    EXPECT_EQ(fault(problem, solution.plan).value_or(""), "");
    EXPECT_TRUE(solution.plan.complete());
    EXPECT_LE(solution.plan.cost * 100, solution.bound * 103);
}

} // namespace
