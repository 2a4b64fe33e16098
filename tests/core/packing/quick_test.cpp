// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/packing/job_data.h"
#include "core/packing/job_files.h"
#include "packing/check.h"
#include "packing/solve.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <filesystem>

using namespace miterbook::packing;

namespace {

TEST(QuickPlan, IsRightOnEveryTinyJob) {
    const std::vector<Job> jobs = readJobs(jobData() + "tiny.txt");
    ASSERT_EQ(jobs.size(), 600U);
    for (const Job& job : jobs) {
        const Solution solution = quickPlan(job.problem);
        ASSERT_TRUE(solution.ok()) << job.name;
        EXPECT_EQ(fault(job.problem, solution.plan).value_or(""), "") << job.name;
        EXPECT_TRUE(solution.plan.complete()) << job.name;
        EXPECT_LE(solution.bound, *job.best) << job.name;
        EXPECT_GE(solution.plan.cost, *job.best) << job.name;
    }
}

TEST(QuickPlan, ComesCloseOnTradeSizedJobs) {
    int jobs = 0;
    for (const auto& entry : std::filesystem::directory_iterator(jobData() + "trim-house")) {
        for (const Job& job : readJobs(entry.path().string())) {
            const Solution solution = quickPlan(job.problem);
            EXPECT_EQ(fault(job.problem, solution.plan).value_or(""), "") << job.name;
            EXPECT_LE(solution.plan.cost * 100, solution.bound * 125) << job.name;
            ++jobs;
        }
    }
    EXPECT_EQ(jobs, 12);
}

TEST(QuickPlan, RefusesNonsenseWithASentence) {
    Problem problem;
    problem.sticks = {{100, 10, std::nullopt}};
    problem.pieces = {{-1, 2}};
    EXPECT_EQ(quickPlan(problem).error, "Piece 1 has a length that cannot be used.");
    problem.pieces = {{10, 2}};
    problem.sticks[0].price = -5;
    EXPECT_EQ(quickPlan(problem).error, "Stick 1 has a price that cannot be used.");
    problem.sticks[0].price = 5;
    problem.kerf = -1;
    EXPECT_EQ(quickPlan(problem).error, "The kerf cannot be used.");
}

} // namespace
