// SPDX-License-Identifier: GPL-3.0-or-later
// Shops whose true rate is known: whether it is found again, and how often the interval holds it.
#include "review/learned_rate.h"

#include <gtest/gtest.h>

#include <cmath>
#include <random>

using namespace miterbook;

namespace {

/// Houses with 6 to 24 doors whose mean rate is `truth`, scattering by `spread`.
std::vector<RateSighting> simulatedHouses(
    std::mt19937& random, int count, double truth, double spread) {
    std::lognormal_distribution<double> factor(-spread * spread / 2, spread);
    std::uniform_int_distribution<int> doors(6, 24);
    std::vector<RateSighting> houses;
    for (int i = 0; i < count; ++i) {
        const int set = doors(random);
        houses.push_back({noDate, Quantity::count(set), truth * factor(random) * set});
    }
    return houses;
}

/// A true rate about the book's 60 minutes, as the belief has it.
double trueRate(std::mt19937& random) {
    return 60 * std::lognormal_distribution<double>(0, RateBelief().bookSpread)(random);
}

constexpr MinutesPerUnit anHour = MinutesPerUnit::whole(60);

} // namespace

TEST(SimulatedShop, ManyHousesGiveTheTrueRate) {
    std::mt19937 random(20260302);
    for (const double truth : {42.0, 60.0, 85.0}) {
        for (const double spread : {.15, .2, .25}) {
            const auto houses = simulatedHouses(random, 400, truth, spread);
            EXPECT_NEAR(learnRate(anHour, houses).minutes / truth, 1, .04)
                << truth << " at " << spread;
        }
    }
}

TEST(SimulatedShop, FewHousesComeNearerThanTheBookOrTheHousesAlone) {
    std::mt19937 random(7);
    double book = 0;
    double alone = 0;
    double learned = 0;
    for (int shop = 0; shop < 400; ++shop) {
        const double truth = trueRate(random);
        const auto houses = simulatedHouses(random, 3, truth, .2);
        double minutes = 0;
        double doors = 0;
        for (const RateSighting& house : houses) {
            minutes += house.minutes;
            doors += house.quantity.toDouble();
        }
        const auto squaredMiss = [&](double rate) { return std::pow(std::log(rate / truth), 2); };
        book += squaredMiss(60);
        alone += squaredMiss(minutes / doors);
        learned += squaredMiss(learnRate(anHour, houses).minutes);
    }
    EXPECT_LT(learned, alone);
    EXPECT_LT(learned, book / 2);
}

TEST(SimulatedShop, TheIntervalHoldsTheTruthAsOftenAsItSays) {
    std::mt19937 random(11);
    for (const int count : {1, 3, 8, 20}) {
        int held = 0;
        constexpr int shops = 600;
        for (int shop = 0; shop < shops; ++shop) {
            const double truth = trueRate(random);
            const LearnedRate rate = learnRate(
                anHour, simulatedHouses(random, count, truth, .2), {}, .9);
            held += rate.low <= truth && truth <= rate.high ? 1 : 0;
        }
        EXPECT_NEAR(static_cast<double>(held) / shops, .9, .06) << count << " houses";
    }
}

TEST(SimulatedShop, AnAbsurdHouseAmongTenHardlyMatters) {
    std::mt19937 random(13);
    for (int shop = 0; shop < 100; ++shop) {
        auto houses = simulatedHouses(random, 10, 60, .2);
        const double before = learnRate(anHour, houses).minutes;
        houses.push_back({noDate, Quantity::count(1), 4800});
        EXPECT_NEAR(learnRate(anHour, houses).minutes / before, 1, .06);
    }
}
