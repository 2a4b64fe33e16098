// SPDX-License-Identifier: GPL-3.0-or-later
#include "bid/trim_cost.h"
#include "small_shop.h"

#include <gmock/gmock.h>

namespace miterbook {
namespace {

/// Casing costs $1.00 a foot in 8 ft sticks and $0.9375 in 16 ft sticks.
TEST(CostWithWaste, IsAtTheCheapestPriceAFoot) {
    const SmallShop shop;
    EXPECT_EQ(
        costWithWaste(Length::feet(100), Percent(), shop.casing, shop.prices), Money::cents(9375));
    // 5 % paint grade, 10 % stain grade [common practice]
    EXPECT_EQ(costWithWaste(Length::feet(100), Percent::whole(5), shop.casing, shop.prices),
        Money::cents(9844)); // 98.4375
    EXPECT_EQ(costWithWaste(Length::feet(100), Percent::whole(10), shop.casing, shop.prices),
        Money::cents(10313)); // 103.125, up
}

TEST(CostWithWaste, LooksAtStockedAndPricedSticksOnly) {
    SmallShop shop;
    shop.addStick(shop.casing, Length::feet(20), Money::dollars(1), false);
    shop.addStick(shop.casing, Length::feet(12), Money());
    EXPECT_EQ(
        costWithWaste(Length::feet(100), Percent(), shop.casing, shop.prices), Money::cents(9375));
    EXPECT_EQ(
        costWithWaste(Length::feet(100), Percent(), Id<Profile>(99), shop.prices), std::nullopt);
}

TEST(Waste, ReplacesTheStickPlanInTheEstimate) {
    const SmallShop shop;
    Takeoff takeoff;
    takeoff.pieces = {pieceOf(PieceOfWork::base, shop.base, Length::feet(9), 2, 1)};
    BidSetup setup = plainSetup();
    EXPECT_EQ(estimateOf(takeoff, shop, setup).total.material, Money::dollars(32)); // two sticks
    setup.waste = Percent::whole(10);
    EXPECT_EQ(estimateOf(takeoff, shop, setup).total.material, Money::cents(1980));
}

TEST(Waste, AProfileWithoutAPriceIsSaid) {
    SmallShop shop;
    shop.prices.of<Stick>() = {};
    Takeoff takeoff;
    takeoff.pieces = {pieceOf(PieceOfWork::base, shop.base, Length::feet(9), 2, 1)};
    BidSetup setup = plainSetup();
    setup.waste = Percent::whole(10);
    EXPECT_THAT(estimateOf(takeoff, shop, setup).problems,
        ::testing::ElementsAre(
            "No stocked stick of Flat base has a price; it costs nothing here."));
}

} // namespace
} // namespace miterbook
