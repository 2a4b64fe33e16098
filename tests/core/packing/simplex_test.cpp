// SPDX-License-Identifier: GPL-3.0-or-later
#include "packing/simplex.h"

#include <gtest/gtest.h>

#include <cmath>
#include <random>

using namespace miterbook::packing;

namespace {

using Entries = std::vector<Simplex::Entry>;

// Rows of covering: sum >= demand, each with a dear stand-in and a free surplus.
struct Cover {
    explicit Cover(const std::vector<double>& demand, double penalty = 1000)
        : simplex(demand.size()) {
        std::vector<int> basis;
        for (std::size_t row = 0; row < demand.size(); ++row) {
            const auto r = static_cast<int>(row);
            basis.push_back(simplex.addColumn(Entries{{r, 1.0}}, penalty));
            simplex.addColumn(Entries{{r, -1.0}}, 0);
            simplex.setRhs(row, demand[row]);
        }
        simplex.start(basis);
    }
    Simplex simplex;
    Budget budget;
};

// Cutting 20 of 3 and 30 of 5 from sticks of 11 at 1: patterns (3,0), (2,1), (0,2), where
// 2 * 3 + 5 = 11 wastes nothing. The program by hand: 10 times (2,1), 10 times (0,2) [calc].
TEST(Simplex, SolvesASmallCuttingProgram) {
    Cover cover({20, 30});
    const int threes = cover.simplex.addColumn(Entries{{0, 3.0}}, 1);
    const int mixed = cover.simplex.addColumn(Entries{{0, 2.0}, {1, 1.0}}, 1);
    const int fives = cover.simplex.addColumn(Entries{{1, 2.0}}, 1);
    ASSERT_TRUE(cover.simplex.primal(cover.budget));
    EXPECT_NEAR(cover.simplex.objective(), 20, 1e-9);
    EXPECT_NEAR(cover.simplex.value(mixed), 10, 1e-9);
    EXPECT_NEAR(cover.simplex.value(fives), 10, 1e-9);
    EXPECT_NEAR(cover.simplex.value(threes), 0, 1e-9);
    EXPECT_NEAR(cover.simplex.dualValue(0), 0.25, 1e-9);
    EXPECT_NEAR(cover.simplex.dualValue(1), 0.5, 1e-9);
    EXPECT_NEAR(cover.simplex.reducedCost(threes), 0.25, 1e-9);
}

TEST(Simplex, DualStepsFollowChangedDemands) {
    Cover cover({20, 30});
    cover.simplex.addColumn(Entries{{0, 3.0}}, 1);
    cover.simplex.addColumn(Entries{{0, 2.0}, {1, 1.0}}, 1);
    cover.simplex.addColumn(Entries{{1, 2.0}}, 1);
    ASSERT_TRUE(cover.simplex.primal(cover.budget));
    cover.simplex.setRhs(0, 80); // now 30 mixed for all of the fives, the rest in threes
    cover.simplex.refresh();
    ASSERT_TRUE(cover.simplex.dual(cover.budget));
    EXPECT_NEAR(cover.simplex.objective(), 30 + 20.0 / 3, 1e-9);
}

TEST(Simplex, BlockedColumnsStayOut) {
    Cover cover({20, 30});
    cover.simplex.addColumn(Entries{{0, 3.0}}, 1);
    const int mixed = cover.simplex.addColumn(Entries{{0, 2.0}, {1, 1.0}}, 1);
    cover.simplex.addColumn(Entries{{1, 2.0}}, 1);
    cover.simplex.setBlocked(mixed, true);
    ASSERT_TRUE(cover.simplex.primal(cover.budget));
    EXPECT_NEAR(cover.simplex.objective(), 20.0 / 3 + 15, 1e-9);
    EXPECT_EQ(cover.simplex.value(mixed), 0);
}

TEST(Simplex, ForgottenColumnsLeaveTheRestAlone) {
    Cover cover({20, 30});
    const int useless = cover.simplex.addColumn(Entries{{0, 1.0}}, 50);
    cover.simplex.addColumn(Entries{{0, 2.0}, {1, 1.0}}, 1);
    cover.simplex.addColumn(Entries{{1, 2.0}}, 1);
    ASSERT_TRUE(cover.simplex.primal(cover.budget));
    ASSERT_FALSE(cover.simplex.basic(useless));
    std::vector<char> kept(cover.simplex.columns(), true);
    kept[static_cast<std::size_t>(useless)] = false;
    cover.simplex.keepOnly(kept);
    cover.simplex.refresh();
    EXPECT_NEAR(cover.simplex.objective(), 20, 1e-9);
    cover.simplex.setRhs(1, 50);
    cover.simplex.refresh();
    ASSERT_TRUE(cover.simplex.dual(cover.budget));
    EXPECT_NEAR(cover.simplex.objective(), 10 + 20, 1e-9);
}

TEST(Simplex, StopsWithTheBudget) {
    Cover cover({20, 30});
    cover.simplex.addColumn(Entries{{0, 2.0}, {1, 1.0}}, 1);
    Budget none(1);
    EXPECT_FALSE(cover.simplex.primal(none));
}

// Optimal means: x covers, no reduced cost is negative, and costs meet worth (weak duality).
void expectOptimal(Cover& cover, const std::vector<double>& demand) {
    double worth = 0;
    for (std::size_t row = 0; row < demand.size(); ++row) {
        EXPECT_GE(cover.simplex.dualValue(row), -1e-7);
        worth += cover.simplex.dualValue(row) * demand[row];
    }
    EXPECT_NEAR(worth, cover.simplex.objective(), 1e-6);
    for (int column = 0; column < static_cast<int>(cover.simplex.columns()); ++column)
        EXPECT_GE(cover.simplex.reducedCost(column), -1e-7);
}

TEST(Simplex, RandomProgramsMeetTheirDuals) {
    std::mt19937 random(5);
    std::uniform_int_distribution<int> some(1, 9);
    for (int example = 0; example < 30; ++example) {
        std::vector<double> demand;
        for (int row = 0; row < 25; ++row)
            demand.push_back(example % 2 == 0 ? 1 : some(random)); // ones: highly degenerate
        Cover cover(demand);
        for (int c = 0; c < 150; ++c) {
            Entries entries;
            for (int row = some(random) % 5; row < 25; row += some(random) + 3)
                entries.emplace_back(row, some(random) % 3 + 1);
            cover.simplex.addColumn(entries, 5 + some(random));
        }
        ASSERT_TRUE(cover.simplex.primal(cover.budget)) << example;
        expectOptimal(cover, demand);
        for (std::size_t row = 0; row < demand.size(); row += 3) {
            demand[row] = some(random) - 1;
            cover.simplex.setRhs(row, demand[row]);
        }
        cover.simplex.refresh();
        ASSERT_TRUE(cover.simplex.dual(cover.budget)) << example;
        ASSERT_TRUE(cover.simplex.primal(cover.budget)) << example;
        expectOptimal(cover, demand);
    }
}

} // namespace
