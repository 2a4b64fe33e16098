// SPDX-License-Identifier: GPL-3.0-or-later
#include "bid/stick_supply.h"
#include "small_shop.h"
#include "takeoff/geometry.h"

#include <gmock/gmock.h>

#include <map>
#include <random>

namespace miterbook {
namespace {

using ::testing::HasSubstr;

StickNeed needOf(Id<Profile> profile, std::vector<StickNeed::Lot> lots, bool mitered = false) {
    return {profile, mitered, std::move(lots), {}};
}

TEST(KerfTaken, SquareCutsTakeTheBlade) {
    EXPECT_EQ(kerfTaken(Length::sixteenths(2), false), Length::sixteenths(2));
    EXPECT_EQ(kerfTaken(Length(), true), Length());
}

/// 1/8 x sqrt 2 is .17678 in: 11.3 sixty-fourths, so 12 [calc].
TEST(KerfTaken, MiteredCutsTakeTheDiagonalRoundedUp) {
    EXPECT_EQ(kerfTaken(Length::sixteenths(2), true), Length::sixtyFourths(12));
    EXPECT_EQ(kerfTaken(Length::millimetres(3), true), Length::sixtyFourths(11)); // .16703 in: 10.7
    const Length kerf = kerfTaken(Length::sixtyFourths(7), true);
    EXPECT_EQ(kerf, Length::sixtyFourths(10)); // 9.9
}

TEST(PlanSticks, TakesTheCheapestMix) {
    const SmallShop shop;
    const StickPlan plan = planSticks(
        needOf(shop.casing, {{Length::feet(8), 3}}), shop.prices, Effort::thorough);
    EXPECT_EQ(plan.cost, Money::dollars(23)); // 16 + 8 ft: 15 + 8, not 24 or 30
    EXPECT_EQ(plan.bound, plan.cost);
    EXPECT_TRUE(plan.proven);
    EXPECT_EQ(plan.needed, Length::feet(24));
    ASSERT_EQ(plan.patterns.size(), 2U);
    EXPECT_EQ(plan.patterns[0].stick, Length::feet(16));
    EXPECT_EQ(plan.patterns[0].pieces, (std::vector<Length>{Length::feet(8), Length::feet(8)}));
    EXPECT_EQ(plan.patterns[1].stick, Length::feet(8));
    EXPECT_EQ(plan.problem, "");
}

TEST(PlanSticks, CutsTakeKerfMoreWhenMitered) {
    SmallShop shop;
    shop.setPractice(Length::sixteenths(2), Length());
    // Two pieces and one cut: 16 ft less 1/8 in fits square cuts, and not mitered ones.
    const Length half = (Length::feet(16) - Length::sixteenths(2)) / 2;
    const auto sticks = [&](bool mitered) {
        const StickPlan plan = planSticks(
            needOf(shop.base, {{half, 2}}, mitered), shop.prices, Effort::quick);
        return plan.cost;
    };
    EXPECT_EQ(sticks(false), Money::dollars(16));
    EXPECT_EQ(sticks(true), Money::dollars(32));
}

TEST(PlanSticks, EndTrimShortensEveryStick) {
    SmallShop shop;
    const StickNeed need = needOf(shop.base, {{Length::feet(8), 2}});
    EXPECT_EQ(planSticks(need, shop.prices, Effort::quick).cost, Money::dollars(16));
    shop.setPractice(Length(), Length::sixteenths(1));
    EXPECT_EQ(planSticks(need, shop.prices, Effort::quick).cost, Money::dollars(32));
}

TEST(PlanSticks, TheRackIsUsedFirstAndCostsNothing) {
    SmallShop shop;
    shop.addOffcut(shop.base, Length::feet(5), 1);
    shop.addOffcut(shop.base, Length::feet(5), 1);
    shop.addOffcut(shop.base, Length::feet(9), 0);
    const StickPlan plan = planSticks(
        needOf(shop.base, {{Length::feet(5), 2}}), shop.prices, Effort::thorough);
    EXPECT_EQ(plan.cost, Money());
    EXPECT_TRUE(plan.proven);
    ASSERT_EQ(plan.patterns.size(), 1U);
    EXPECT_TRUE(plan.patterns[0].offcut);
    EXPECT_EQ(plan.patterns[0].times, 2);
    EXPECT_EQ(plan.patterns[0].price, Money());
}

TEST(PlanSticks, OnlyStockedSticksAreBought) {
    SmallShop shop;
    shop.addStick(shop.base, Length::feet(8), Money::dollars(1), false);
    const StickPlan plan = planSticks(
        needOf(shop.base, {{Length::feet(8), 1}}), shop.prices, Effort::quick);
    EXPECT_EQ(plan.cost, Money::dollars(16));
}

TEST(PlanSticks, APieceTooLongIsSaidAndTheRestPlanned) {
    const SmallShop shop;
    const StickPlan plan = planSticks(
        needOf(shop.base, {{Length::feet(17), 2}, {Length::feet(8), 2}, {Length::feet(18), 1}}),
        shop.prices, Effort::quick);
    EXPECT_EQ(plan.cost, Money::dollars(16));
    EXPECT_FALSE(plan.proven);
    EXPECT_EQ(plan.problem,
        "Flat base: 3 pieces up to " + formatLengthWithUnit(Length::feet(18))
            + " are longer than the longest stick (" + formatLengthWithUnit(Length::feet(16))
            + ").");
}

TEST(PlanSticks, NoStickAtAllIsSaid) {
    SmallShop shop;
    Profile profile;
    profile.id = shop.ids.next<Profile>();
    profile.name = "Odd cap";
    shop.prices.of<Profile>().put(profile);
    const StickNeed need = needOf(profile.id, {{Length::feet(3), 2}});
    EXPECT_EQ(planSticks(need, shop.prices, Effort::quick).problem,
        "No stick of Odd cap is stocked; 2 pieces come out of none.");
    shop.addStick(profile.id, Length::feet(8), Money());
    const StickPlan plan = planSticks(need, shop.prices, Effort::thorough);
    EXPECT_EQ(plan.problem, "No stick of Odd cap has a price; 2 pieces come out of none.");
    EXPECT_FALSE(plan.proven);
    EXPECT_TRUE(plan.patterns.empty());
    shop.addOffcut(profile.id, Length::feet(4), 1);
    EXPECT_EQ(planSticks(need, shop.prices, Effort::quick).problem,
        "No stick of Odd cap has a price; 1 piece comes out of none.");
}

TEST(PlanSticks, ARackThatRunsOutOfLongOffcutsIsSaid) {
    SmallShop shop;
    shop.addOffcut(shop.base, Length::feet(20), 1);
    const StickPlan plan = planSticks(
        needOf(shop.base, {{Length::feet(19), 2}}), shop.prices, Effort::quick);
    EXPECT_THAT(
        plan.problem, HasSubstr("offcuts of Flat base that are long enough run out; 1 piece"));
}

TEST(PlanSticks, NothingNeededIsNothingBought) {
    const SmallShop shop;
    const StickPlan plan = planSticks(needOf(shop.base, {}), shop.prices, Effort::quick);
    EXPECT_EQ(plan.cost, Money());
    EXPECT_TRUE(plan.patterns.empty());
    EXPECT_EQ(plan.problem, "");
}

TEST(PlanSticks, AStopEndsEarlyWithAPlan) {
    const SmallShop shop;
    std::vector<StickNeed::Lot> lots;
    for (int i = 0; i < 40; ++i)
        lots.push_back({Length::sixteenths(900 + 37 * i), 3});
    const StickPlan plan = planSticks(
        needOf(shop.casing, lots), shop.prices, Effort::thorough, [] { return true; });
    EXPECT_GT(plan.cost, Money());
    EXPECT_EQ(plan.problem, "");
}

/// Random needs: every piece is cut as often as needed, every pattern fits its stick, the cost is
/// the patterns', a thorough plan is never dearer than a quick one, and both say the same twice.
TEST(PlanSticks, RandomPlansHold) {
    SmallShop shop;
    shop.setPractice(Length::sixteenths(2), Length::sixteenths(8));
    shop.addOffcut(shop.casing, Length::inches(61), 2);
    std::mt19937 random(7);
    for (int round = 0; round < 12; ++round) {
        std::vector<StickNeed::Lot> lots;
        for (unsigned i = 0, kinds = 1 + random() % 8; i < kinds; ++i)
            lots.push_back({Length::sixteenths(160 + static_cast<int>(random() % 1400)),
                1 + static_cast<int>(random() % 5)});
        const StickNeed need = needOf(shop.casing, lots, round % 2 == 0);
        const StickPlan quick = planSticks(need, shop.prices, Effort::quick);
        const StickPlan thorough = planSticks(need, shop.prices, Effort::thorough);
        EXPECT_LE(thorough.cost, quick.cost);
        EXPECT_LE(thorough.bound, thorough.cost);
        EXPECT_EQ(thorough, planSticks(need, shop.prices, Effort::thorough));
        std::map<Length, int> wanted;
        for (const StickNeed::Lot& lot : lots)
            wanted[lot.length] += lot.count;
        Money cost;
        const Length kerf = kerfTaken(Length::sixteenths(2), need.mitered);
        for (const CutPattern& pattern : thorough.patterns) {
            cost += pattern.price * pattern.times;
            Length taken = -kerf;
            for (const Length piece : pattern.pieces) {
                taken += piece + kerf;
                wanted[piece] -= pattern.times;
            }
            EXPECT_LE(taken, pattern.stick - Length::sixteenths(8));
        }
        EXPECT_EQ(cost, thorough.cost);
        for (const auto& [length, left] : wanted)
            EXPECT_EQ(left, 0);
    }
}

} // namespace
} // namespace miterbook
