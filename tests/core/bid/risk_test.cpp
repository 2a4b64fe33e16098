// SPDX-License-Identifier: GPL-3.0-or-later
#include "bid/risk.h"

#include <gmock/gmock.h>

#include <algorithm>
#include <cmath>
#include <numeric>
#include <random>

using namespace miterbook;

namespace {

constexpr std::array riskWorks{PieceOfWork::doors, PieceOfWork::windows, PieceOfWork::base,
    PieceOfWork::crown, PieceOfWork::closets, PieceOfWork::stairs};
constexpr std::array riskHours{24.0, 20.0, 18.0, 8.0, 6.0, 14.0};

/// Works at $50.00 an hour with $1,000.00 of other cost and 20 % on cost.
Estimate bidOf(const std::vector<std::pair<PieceOfWork, double>>& hours) {
    Estimate estimate;
    estimate.crewRate = Money::cents(50'00);
    for (const auto& [work, each] : hours) {
        WorkTotal total;
        total.work = work;
        total.hours = Hours::minutes(std::llround(each * 60));
        total.labour = Money::cents(std::llround(each * 50'00));
        estimate.works.push_back(total);
        estimate.total.hours += total.hours;
        estimate.total.labour += total.labour;
    }
    estimate.total.material = Money::cents(1000'00);
    estimate.total.profit = Money::cents(estimate.total.cost().cents() / 5);
    estimate.total.price = estimate.total.cost() + estimate.total.profit;
    return estimate;
}

Estimate wholeBid() {
    std::vector<std::pair<PieceOfWork, double>> hours;
    for (std::size_t i = 0; i < riskWorks.size(); ++i)
        hours.emplace_back(riskWorks[i], riskHours[i]);
    return bidOf(hours);
}

double inHours(Hours hours) {
    return static_cast<double>(hours.minutes()) / 60;
}

/// A shop whose true drifts and spreads are known.
class SimulatedShop {
public:
    SimulatedShop(unsigned seed, double workSpread, double houseSpread, double driftSpread)
        : m_random(seed)
        , m_workSpread(workSpread)
        , m_houseSpread(houseSpread) {
        for (double& drift : m_drifts)
            drift = driftSpread * m_normal(m_random);
    }
    /// Hours used for each work of one house.
    std::array<double, riskWorks.size()> house() {
        const double shared = m_houseSpread * m_normal(m_random);
        std::array<double, riskWorks.size()> used{};
        for (std::size_t i = 0; i < used.size(); ++i)
            used[i] = riskHours[i]
                * std::exp(m_drifts[i] + shared + m_workSpread * m_normal(m_random));
        return used;
    }
    std::vector<FinishedWork> history(int houses) {
        std::vector<FinishedWork> finished;
        for (int h = 0; h < houses; ++h) {
            const auto used = house();
            for (std::size_t i = 0; i < used.size(); ++i)
                finished.push_back(
                    {h, riskWorks[i], Hours::minutes(std::llround(riskHours[i] * 60)),
                        Hours::minutes(std::llround(used[i] * 60))});
        }
        return finished;
    }

private:
    std::mt19937 m_random;
    std::normal_distribution<double> m_normal;
    double m_workSpread;
    double m_houseSpread;
    std::array<double, riskWorks.size()> m_drifts{};
};

double total(const std::array<double, riskWorks.size()>& hours) {
    return std::accumulate(hours.begin(), hours.end(), 0.0);
}

/// How often a 90 % interval from so many houses holds the next house, over shops of fixed seeds.
double coverage(int houses, double workSpread, double houseSpread) {
    constexpr unsigned shops = 400;
    int held = 0;
    for (unsigned seed = 1; seed <= shops; ++seed) {
        SimulatedShop shop(seed, workSpread, houseSpread, RiskBelief::starterDriftSpread);
        const RiskOutlook outlook(wholeBid(), riskBelief(shop.history(houses)));
        const double next = total(shop.house());
        held += next >= inHours(outlook.hoursAt(0.05)) && next <= inHours(outlook.hoursAt(0.95));
    }
    return double(held) / shops;
}

} // namespace

TEST(Risk, AShopWithoutHousesHasTheStartersSpread) {
    const RiskBelief belief = riskBelief({});
    EXPECT_EQ(belief.houses, 0);
    EXPECT_DOUBLE_EQ(belief.houseVariance, 0.10 * 0.10);
    EXPECT_DOUBLE_EQ(belief.of(PieceOfWork::doors).drift, 0);
    EXPECT_DOUBLE_EQ(belief.of(PieceOfWork::doors).variance, 0.20 * 0.20 + 0.15 * 0.15);
    EXPECT_EQ(RiskOutlook(wholeBid(), belief).houses(), 0);
}

TEST(Risk, OneWorkIsALognormalWithStudentsQuantiles) {
    // [pub] NIST e-Handbook 1.3.6.7.2: t(6 degrees of freedom) .95 = 1.943, .90 = 1.440.
    RiskBelief belief = riskBelief({});
    belief.houseVariance = 0; // so that there is one variance, of 6 degrees of freedom
    const RiskOutlook outlook(bidOf({{PieceOfWork::doors, 24}}), belief);
    const double spread = std::sqrt(0.20 * 0.20 + 0.15 * 0.15);
    EXPECT_NEAR(inHours(outlook.hoursAt(0.5)), 24, 0.02);
    EXPECT_NEAR(inHours(outlook.hoursAt(0.95)), 24 * std::exp(1.943 * spread), 0.03);
    EXPECT_NEAR(inHours(outlook.hoursAt(0.90)), 24 * std::exp(1.440 * spread), 0.03);
    EXPECT_NEAR(inHours(outlook.hoursAt(0.10)), 24 * std::exp(-1.440 * spread), 0.03);
    EXPECT_EQ(outlook.works().front().high, outlook.hoursAt(0.95));
}

TEST(Risk, AllHoursTogetherAgreeWithASimulation) {
    RiskBelief belief = riskBelief({});
    belief.houseFreedom = 1e7; // as good as normal: only the sum of lognormals is approximated
    for (WorkBelief& work : belief.works)
        work.freedom = 1e7;
    const RiskOutlook outlook(wholeBid(), belief);
    std::mt19937 random(20260420);
    std::normal_distribution<double> normal;
    std::vector<double> sums;
    for (int draw = 0; draw < 200'000; ++draw) {
        const double shared = std::sqrt(belief.houseVariance) * normal(random);
        double sum = 0;
        for (std::size_t i = 0; i < riskWorks.size(); ++i)
            sum += riskHours[i]
                * std::exp(shared + std::sqrt(belief.of(riskWorks[i]).variance) * normal(random));
        sums.push_back(sum);
    }
    std::ranges::sort(sums);
    const auto at = [&](double part) {
        return sums[static_cast<std::size_t>(part * static_cast<double>(sums.size()))];
    };
    EXPECT_NEAR(
        inHours(outlook.expected()), std::accumulate(sums.begin(), sums.end(), 0.0) / 2e5, 0.2);
    for (const double part : {0.05, 0.25, 0.5, 0.75, 0.9, 0.95})
        EXPECT_NEAR(inHours(outlook.hoursAt(part)), at(part), 0.012 * at(part)) << part;
}

TEST(Risk, NinetyPercentIntervalsHoldNinetyPercentOfHouses) {
    for (const int houses : {0, 1, 3, 10, 40}) {
        const double held = coverage(houses, 0.20, 0.10);
        EXPECT_GE(held, 0.85) << houses;
        EXPECT_LE(held, 0.95) << houses;
    }
}

TEST(Risk, ShopsOfOtherSpreadsAreLearned) {
    for (const auto& [work, house] : {std::pair(0.30, 0.05), std::pair(0.12, 0.18)}) {
        const double held = coverage(40, work, house);
        EXPECT_GE(held, 0.85) << work << " " << house;
        EXPECT_LE(held, 0.95) << work << " " << house;
    }
}

TEST(Risk, ADriftIsLearnedAndFewHousesAreHeldBack) {
    const auto doorsAtOneAndAHalf = [](int houses) {
        std::vector<FinishedWork> finished;
        for (int h = 0; h < houses; ++h)
            finished.push_back({h, PieceOfWork::doors, Hours::minutes(600), Hours::minutes(900)});
        return riskBelief(finished).of(PieceOfWork::doors);
    };
    EXPECT_EQ(doorsAtOneAndAHalf(2).houses, 2);
    EXPECT_LT(doorsAtOneAndAHalf(1).drift, 0.6 * std::log(1.5));
    EXPECT_GT(doorsAtOneAndAHalf(1).drift, 0.1 * std::log(1.5));
    EXPECT_NEAR(doorsAtOneAndAHalf(200).drift, std::log(1.5), 0.01);
}

TEST(Risk, OneAbsurdEntryMovesADriftByABoundedStep) {
    SimulatedShop shop(7, 0.20, 0.10, 0);
    std::vector<FinishedWork> finished = shop.history(12);
    const double before = riskBelief(finished).of(PieceOfWork::doors).drift;
    finished.front().used = Hours::minutes(80 * 60 * 60); // 80 times 60 hours for doors
    const double after = riskBelief(finished).of(PieceOfWork::doors).drift;
    EXPECT_GT(after, before);
    EXPECT_LE(after - before, 2 * RiskBelief::furthest / 12);
}

TEST(Risk, WorksWithoutHoursSayNothing) {
    EXPECT_EQ(riskBelief({{1, PieceOfWork::doors, Hours(), Hours::minutes(60)},
                  {1, PieceOfWork::base, Hours::minutes(60), Hours()}}),
        riskBelief({}));
    EXPECT_FALSE(RiskOutlook(Estimate(), riskBelief({})).any());
    EXPECT_EQ(RiskOutlook(Estimate(), riskBelief({})).chanceOfProfit(), 0);
}

TEST(Risk, SharesAddUpAndTheLargestWorkCarriesMost) {
    const RiskOutlook outlook(wholeBid(), riskBelief({}));
    double sum = 0;
    for (const WorkRisk& work : outlook.works())
        sum += work.share;
    EXPECT_NEAR(sum, 1, 1e-12);
    const auto most = std::ranges::max_element(outlook.works(), {}, &WorkRisk::share);
    EXPECT_EQ(most->work, PieceOfWork::doors);
}

TEST(Risk, ChancesCostsAndPricesAgree) {
    const Estimate estimate = wholeBid(); // 90 h, labour 4,500, other 1,000, profit 1,100
    const RiskOutlook outlook(estimate, riskBelief({}));
    EXPECT_DOUBLE_EQ(outlook.breakEvenHours(), 112); // (6,600 - 1,000) / 50
    EXPECT_NEAR(outlook.chanceBelow(inHours(outlook.hoursAt(0.8))), 0.8, 0.001);
    EXPECT_GT(outlook.chanceOfProfit(), outlook.chanceOfTarget());
    const double certainty = outlook.chanceOfProfit();
    EXPECT_NEAR(static_cast<double>(outlook.priceFor(certainty, Money()).cents()),
        static_cast<double>(estimate.total.price.cents()), 100);
    EXPECT_LT(outlook.costAt(0.5), outlook.costAt(0.9));
    EXPECT_EQ(outlook.priceFor(0.9, Money::cents(5)), outlook.costAt(0.9) + Money::cents(5));
}
