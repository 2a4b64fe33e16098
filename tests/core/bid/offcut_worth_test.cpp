// SPDX-License-Identifier: GPL-3.0-or-later
// Offcuts that count for something: Practice::offcutWorth and keepOffcut.
#include "bid/stick_supply.h"

#include <gtest/gtest.h>

namespace miterbook {
namespace {

constexpr Id<Profile> casing(3);

class OffcutWorth : public ::testing::Test {
protected:
    OffcutWorth() {
        Profile profile;
        profile.id = casing;
        profile.name = "casing";
        m_prices.of<Profile>().put(profile);
        put(1, 8, 8);
        put(2, 16, 16);
        count(Percent());
    }
    void put(int id, int feet, int dollars) {
        m_prices.of<Stick>().put(
            {Id<Stick>(id), casing, Length::feet(feet), Money::dollars(dollars), true, {}});
    }
    void count(Percent worth) {
        Practice practice;
        practice.id = Id<Practice>(1);
        practice.kerf = Length();
        practice.keepOffcut = Length::feet(2);
        practice.offcutWorth = worth;
        m_prices.of<Practice>().put(practice);
    }
    void onRack(int id, int feet) {
        Offcut offcut;
        offcut.id = Id<Offcut>(id);
        offcut.profile = casing;
        offcut.length = Length::feet(feet);
        offcut.count = 1;
        m_prices.of<Offcut>().put(offcut);
    }
    StickPlan plan(std::vector<StickNeed::Lot> lots) const {
        return planSticks({casing, false, std::move(lots), {}}, m_prices, Effort::thorough);
    }

    PriceBook m_prices;
};

TEST_F(OffcutWorth, IsNothingUnlessSaid) {
    const packing::Problem problem = cuttingProblem(
        {}, false, stickSupply(casing, m_prices), m_prices.practice());
    EXPECT_EQ(problem.salvage, packing::Salvage());
}

// [calc] Half of 1.00 a foot; a 7 ft offcut is worth 3.50 in the rack, one of 1 ft nothing.
TEST_F(OffcutWorth, CountsByTheLengthOfTheCheapestStick) {
    count(Percent::whole(50));
    onRack(7, 7);
    onRack(8, 1);
    const packing::Problem problem = cuttingProblem(
        {}, false, stickSupply(casing, m_prices), m_prices.practice());
    EXPECT_EQ(problem.salvage.shortest, Length::feet(2).nm());
    ASSERT_EQ(problem.sticks.size(), 4U);
    EXPECT_EQ(problem.sticks[0].price, 350);
    EXPECT_EQ(problem.sticks[1].price, 0);
    EXPECT_EQ(problem.sticks[2].price, 800);
}

// [calc] A piece of 3 ft from a 10 ft offcut leaves 7 ft of it; a 4 ft offcut leaves 1 ft, too
// short to keep. At 50 % that is 3 x .50 used up against 4 x .50; with offcuts worth nothing either
// will do.
TEST_F(OffcutWorth, CutsUpTheOffcutThatIsMissedLeast) {
    onRack(7, 10);
    onRack(8, 4);
    count(Percent::whole(50));
    const StickPlan cut = plan({{Length::feet(3), 1}});
    ASSERT_EQ(cut.patterns.size(), 1U);
    EXPECT_EQ(cut.patterns.front().stick, Length::feet(10));
    EXPECT_EQ(cut.cost, Money());
    EXPECT_EQ(cut.bound, Money());
    EXPECT_TRUE(cut.proven);
}

// [calc] 9 ft: a 16 at 16.00 leaves 7 ft, at 90 % worth 6.30: 9.70 in the end. A 10 ft stick
// at 11.00 leaves 1 ft. Counting nothing the 10 is bought, counting offcuts the 16; what is paid is
// said.
TEST_F(OffcutWorth, BuysLongerForAGoodOffcutAndSaysWhatIsPaid) {
    put(3, 10, 11);
    EXPECT_EQ(plan({{Length::feet(9), 1}}).cost, Money::dollars(11));
    count(Percent::whole(90));
    const StickPlan longer = plan({{Length::feet(9), 1}});
    EXPECT_EQ(longer.cost, Money::dollars(16));
    EXPECT_EQ(longer.bound, Money::dollars(16));
    EXPECT_TRUE(longer.proven);
}

} // namespace
} // namespace miterbook
