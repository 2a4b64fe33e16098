// SPDX-License-Identifier: GPL-3.0-or-later
// Against the truth found by trying every way.
#include "core/packing/brute_force.h"
#include "core/packing/job_data.h"
#include "core/packing/job_files.h"
#include "packing/check.h"
#include "packing/solve.h"

#include <gtest/gtest.h>

using namespace miterbook::packing;

namespace {

constexpr std::int64_t plenty = 2'000'000;

void expectExact(const Problem& problem, const std::string& name) {
    Budget budget(plenty);
    const Solution solution = solve(problem, budget);
    ASSERT_TRUE(solution.ok()) << solution.error;
    EXPECT_EQ(fault(problem, solution.plan).value_or(""), "") << name;
    const std::optional<std::int64_t> best = bruteForce(problem);
    if (!best) {
        EXPECT_FALSE(solution.plan.complete()) << name;
        EXPECT_FALSE(solution.proven) << name;
        return;
    }
    EXPECT_LE(solution.bound, *best) << name;
    ASSERT_TRUE(solution.plan.complete()) << name;
    EXPECT_EQ(solution.plan.cost, *best) << name;
}

TEST(Exact, BruteForceKnowsASmallAnswer) {
    Problem problem;
    problem.sticks = {{100, 10, std::nullopt}, {60, 5, 1}};
    problem.pieces = {{50, 2}, {30, 1}};
    EXPECT_EQ(bruteForce(problem), 15);
    problem.kerf = 1; // 50 + 1 + 50 no longer fits: two long ones, or one of each
    EXPECT_EQ(bruteForce(problem), 15);
    problem.pieces.push_back({20, 1});
    EXPECT_EQ(bruteForce(problem), 20);
    problem.sticks[0].available = 1;
    EXPECT_EQ(bruteForce(problem), std::nullopt);
}

TEST(Exact, AllTinyJobsReachTheirOptimumAndProveIt) {
    const std::vector<Job> jobs = readJobs(jobData() + "tiny.txt");
    ASSERT_EQ(jobs.size(), 600U);
    for (const Job& job : jobs) {
        Budget budget(plenty);
        const Solution solution = solve(job.problem, budget);
        EXPECT_EQ(fault(job.problem, solution.plan).value_or(""), "") << job.name;
        EXPECT_EQ(solution.plan.cost, *job.best) << job.name;
        EXPECT_LE(solution.bound, *job.best) << job.name;
        EXPECT_TRUE(solution.proven) << job.name;
    }
}

TEST(Exact, RandomSmallProblems) {
    std::mt19937 random(11);
    for (int i = 0; i < 400; ++i)
        expectExact(smallProblem(random, false, false), "unlimited " + std::to_string(i));
}

TEST(Exact, RandomSmallProblemsWithCreditedRemainders) {
    std::mt19937 random(12);
    for (int i = 0; i < 300; ++i)
        expectExact(smallProblem(random, false, true), "credited " + std::to_string(i));
}

TEST(Exact, RandomSmallProblemsFromLimitedSticks) {
    std::mt19937 random(13);
    for (int i = 0; i < 400; ++i)
        expectExact(smallProblem(random, true, false), "limited " + std::to_string(i));
}

// Of all plans at the lowest cost the one with fewest patterns, then the longest remainder.
void expectTidiest(std::uint32_t seed, bool limited, bool credited, int problems) {
    std::mt19937 random(seed);
    int judged = 0;
    for (int i = 0; i < problems; ++i) {
        const Problem problem = smallProblem(random, limited, credited);
        Budget budget(plenty);
        const Solution solution = solve(problem, budget);
        if (!solution.proven || solution.plan.patterns.empty())
            continue;
        const Tidy best = tidiest(problem, solution.plan.cost);
        const Tidy here = tidiness(problem, solution.plan);
        EXPECT_EQ(here.patterns, best.patterns) << i;
        EXPECT_EQ(here.longest, best.longest) << i;
        ++judged;
    }
    EXPECT_GT(judged, problems / 4);
}

TEST(Exact, AmongEqualCostsTheTidiest) {
    expectTidiest(21, false, false, 300);
}

TEST(Exact, AmongEqualCostsTheTidiestFromLimitedSticks) {
    expectTidiest(22, true, false, 200);
}

TEST(Exact, AmongEqualCostsTheTidiestWithCreditedRemainders) {
    expectTidiest(23, false, true, 150);
}

} // namespace
