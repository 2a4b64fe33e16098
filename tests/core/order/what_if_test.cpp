// SPDX-License-Identifier: GPL-3.0-or-later
#include "order/what_if.h"

#include <gmock/gmock.h>

namespace miterbook {
namespace {

using ::testing::HasSubstr;

constexpr Id<Profile> casing(3);

class WhatIfTest : public ::testing::Test {
protected:
    WhatIfTest() {
        Profile profile;
        profile.id = casing;
        profile.name = "casing";
        m_prices.of<Profile>().put(profile);
        Practice practice;
        practice.id = Id<Practice>(1);
        practice.kerf = Length::sixteenths(2);
        m_prices.of<Practice>().put(practice);
        put(1, 8, 8);
        put(2, 16, 17);
        m_need.profile = casing;
        m_need.lots = {{Length::inches(47), 8}}; // two to an 8 ft stick, four to a 16
    }
    void put(int id, int feet, int dollars) {
        m_prices.of<Stick>().put(
            {Id<Stick>(id), casing, Length::feet(feet), Money::dollars(dollars), true, {}});
    }
    std::vector<StickPlan> now() const {
        return planAllSticks({m_need}, m_prices, Effort::thorough);
    }
    Result<std::vector<StickPlan>> then(const WhatIf& whatIf) const {
        return plansIf({m_need}, m_prices, whatIf, {{m_need}, now()});
    }
    Money costIf(const WhatIf& whatIf) const { return orderSums(*then(whatIf)).cost; }

    PriceBook m_prices;
    StickNeed m_need;
};

// [calc] four 8 ft sticks at 8.
TEST_F(WhatIfTest, SumsUpThePlans) {
    const OrderSums sums = orderSums(now());
    EXPECT_EQ(sums.cost, Money::dollars(32));
    EXPECT_EQ(sums.bound, Money::dollars(32));
    EXPECT_TRUE(sums.proven);
    EXPECT_EQ(sums.bought, Length::feet(32));
    EXPECT_EQ(sums.sticks, 4);
    EXPECT_EQ(sums.fromRack, 0);
    EXPECT_EQ(sums.patterns, 1);
}

TEST_F(WhatIfTest, NothingChangedLeavesThePlansAlone) {
    EXPECT_TRUE(WhatIf().nothing());
    EXPECT_EQ(*then({}), now());
}

// [calc] Two 47s and a 2 1/4 kerf are 96 1/4: one to an 8 ft stick, three to a 16: 17 + 17 + 8 + 8.
TEST_F(WhatIfTest, AnotherKerf) {
    WhatIf whatIf;
    whatIf.kerf = Length::inches(2) + Length::sixteenths(4);
    EXPECT_EQ(costIf(whatIf), Money::dollars(50));
}

TEST_F(WhatIfTest, OnlyTheLengthsThatAreThere) {
    WhatIf whatIf;
    whatIf.outOfStock = {Length::feet(8)};
    EXPECT_EQ(costIf(whatIf), Money::dollars(34));
    whatIf.outOfStock.push_back(Length::feet(16));
    EXPECT_THAT(then(whatIf)->front().problem, HasSubstr("casing"));
}

TEST_F(WhatIfTest, AnotherPriceOfOneLength) {
    WhatIf whatIf;
    whatIf.offer = WhatIf::Offer{casing, Length::feet(16), Money::dollars(15)};
    EXPECT_EQ(costIf(whatIf), Money::dollars(30));
    EXPECT_EQ(orderSums(*then(whatIf)).sticks, 2);
}

// [calc] With a 12 ft stick at 20 for three 47s: 16 + 16 is 32 ft for 34 where the cheapest plan
// buys 32 ft for 32; no plan buys less than 32.
TEST_F(WhatIfTest, SaysWhenNoPlanBuysSoMuchLess) {
    WhatIf whatIf;
    whatIf.less = Length::feet(10);
    const auto plans = then(whatIf);
    ASSERT_FALSE(plans.ok());
    EXPECT_THAT(plans.error().sentence, HasSubstr("10' 0\" less."));
}

// [calc] Five pieces of 40: 8 ft sticks at 6 take two each, 3 x 8 = 24 ft for 18; 10 ft ones
// at 8.50 take three (120 1/4 does not fit: two), 17 ft ones at 16 take five (200 1/2): 17 ft, 7 ft
// less, for 16 would be cheaper, so let it be 20.
TEST_F(WhatIfTest, BuysLessAtTheTruePrice) {
    put(1, 8, 6);
    put(2, 17, 20);
    m_need.lots = {{Length::inches(40), 5}};
    EXPECT_EQ(orderSums(now()).cost, Money::dollars(18));
    WhatIf whatIf;
    whatIf.less = Length::feet(5);
    const auto plans = then(whatIf);
    ASSERT_TRUE(plans.ok()) << plans.error().sentence;
    const OrderSums sums = orderSums(*plans);
    EXPECT_EQ(sums.cost, Money::dollars(20));
    EXPECT_EQ(sums.bought, Length::feet(17));
    EXPECT_EQ(sums.bound, Money::dollars(18));
    EXPECT_FALSE(sums.proven);
    EXPECT_EQ(plans->front().patterns.front().price, Money::dollars(20));
}

// Other needs are planned anew, whatever stays as it is.
TEST_F(WhatIfTest, PlansWhatIsNeededThen) {
    StickNeed more = m_need;
    more.lots.front().count = 10;
    const auto plans = plansIf({more}, m_prices, {}, {{m_need}, now()});
    ASSERT_TRUE(plans.ok());
    EXPECT_EQ(orderSums(*plans).cost, Money::dollars(40));
}

TEST_F(WhatIfTest, TheBookIsOnlyCopied) {
    const PriceBook before = m_prices;
    WhatIf whatIf;
    whatIf.kerf = Length();
    whatIf.outOfStock = {Length::feet(8)};
    const PriceBook after = pricesIf(m_prices, whatIf);
    EXPECT_EQ(after.practice().kerf, Length());
    EXPECT_EQ(after.stockedSticks(casing).size(), 1U);
    EXPECT_EQ(m_prices, before);
}

} // namespace
} // namespace miterbook
