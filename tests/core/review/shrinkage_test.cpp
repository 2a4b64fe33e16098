// SPDX-License-Identifier: GPL-3.0-or-later
// Shrinkage against classic published data.
#include "review/shrinkage.h"

#include <gtest/gtest.h>

#include <array>
#include <cmath>

using namespace miterbook;

namespace {

std::vector<GroupMean> groupsOf(
    const std::vector<double>& means, const std::vector<double>& errors) {
    std::vector<GroupMean> groups;
    for (std::size_t i = 0; i < means.size(); ++i)
        groups.push_back({means[i], errors[i] * errors[i]});
    return groups;
}

/// [pub] Rubin 1981, Estimation in parallel randomized experiments: eight schools.
const auto schools = groupsOf({28, 8, -3, 7, -1, 1, 18, 12}, {15, 10, 16, 11, 9, 11, 10, 18});

} // namespace

TEST(Pool, OfTheEightSchools) {
    // [calc] on the published data: pooled 7.686, standard error 4.072, nothing between schools.
    const PooledMean pool = poolDerSimonianLaird(schools);
    EXPECT_NEAR(pool.mean, 7.686, .0005);
    EXPECT_NEAR(pool.error, 4.072, .0005);
    EXPECT_EQ(pool.between, 0);
}

TEST(Shrink, LeavesNoDistanceWhereNothingIsBetween) {
    for (const ShrunkMean& school : shrink(schools, poolDerSimonianLaird(schools))) {
        EXPECT_EQ(school.kept, 0);
        EXPECT_NEAR(school.mean, 7.686, .0005);
    }
}

TEST(Shrink, KeepsAHalfWhereBothVariancesAreAlike) {
    // [calc] school A, between 15^2 as its own variance: half way from 28 to the pool.
    PooledMean pool = poolDerSimonianLaird(schools);
    pool.between = 225;
    const auto shrunk = shrink(schools, pool);
    EXPECT_DOUBLE_EQ(shrunk[0].kept, .5);
    EXPECT_NEAR(shrunk[0].mean, (28 + pool.mean) / 2, 1e-12);
    EXPECT_NEAR(shrunk[0].error, 15 / std::sqrt(2.0), 1e-12);
    EXPECT_GT(shrunk[4].kept, shrunk[2].kept) << "who is known better keeps more";
}

TEST(Pool, FindsWhatIsBetween) {
    // [calc] equal variances v: weights w = 1/v, Q = S/v, scale = (k - 1)/v, so that the variance
    // between is S/(k - 1) - v. Means 1, 2, 3, 6 with v = 1: S = 14, between 14/3 - 1.
    const std::vector<GroupMean> groups{{1, 1}, {2, 1}, {3, 1}, {6, 1}};
    const PooledMean pool = poolDerSimonianLaird(groups);
    EXPECT_NEAR(pool.between, 14.0 / 3 - 1, 1e-12);
    EXPECT_NEAR(pool.mean, 3, 1e-12);
    EXPECT_NEAR(pool.error, std::sqrt(14.0 / 3 / 4), 1e-12);
}

TEST(Pool, OfOneOrNone) {
    EXPECT_EQ(poolDerSimonianLaird({}).mean, 0);
    const PooledMean one = poolDerSimonianLaird({{5, 4}});
    EXPECT_EQ(one.mean, 5);
    EXPECT_EQ(one.error, 2);
    EXPECT_EQ(one.between, 0);
}

TEST(GammaPoisson, OfThePumps) {
    // [pub] BUGS examples, pumps: failures and operating times; [calc] closed form on them with
    // more digits of the two parameters than are written here.
    constexpr std::array events{5.0, 1.0, 5.0, 14.0, 3.0, 19.0, 1.0, 1.0, 4.0, 22.0};
    constexpr std::array times{94.3, 15.7, 62.9, 126.0, 5.24, 31.4, 1.05, 1.05, 2.1, 10.5};
    constexpr std::array rates{
        .0597, .1012, .0890, .1157, .5998, .6094, .8639, .8639, 1.5629, 1.9905};
    for (std::size_t i = 0; i < events.size(); ++i)
        EXPECT_NEAR(gammaPoissonRate(events[i], times[i], .679, .894), rates[i], 3e-4) << i;
}

TEST(JamesStein, OfTheBatters) {
    // [pub] Efron and Morris 1977, Stein's Paradox in Statistics: hits of 45; c = .212, with the
    // binomial variance at the grand mean.
    std::vector<double> averages;
    double mean = 0;
    for (const int hits : {18, 17, 16, 15, 14, 14, 13, 12, 11, 11, 10, 10, 10, 10, 10, 9, 8, 7}) {
        averages.push_back(hits / 45.0);
        mean += hits / 45.0 / 18;
    }
    EXPECT_NEAR(jamesSteinShare(averages, mean * (1 - mean) / 45), .212, .0005);
}

TEST(JamesStein, KeepsAllOfFewAndNothingOfNoise) {
    EXPECT_EQ(jamesSteinShare({1, 2, 3}, 1), 1);
    EXPECT_EQ(jamesSteinShare({1, 1, 1, 1}, 1), 0);
    EXPECT_EQ(jamesSteinShare({1, 2, 1, 2}, 100), 0);
}
