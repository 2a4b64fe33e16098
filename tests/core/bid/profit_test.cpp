// SPDX-License-Identifier: GPL-3.0-or-later
#include "bid/profit.h"

#include <gmock/gmock.h>

namespace miterbook {
namespace {

TEST(Profit, MarkupIsOnCost) {
    // 200,000 at 25 % markup is 250,000, a gross profit of 20 % [pub: engineeringtoolbox.com
    // d_1706]
    const Money price = priceAtMarkup(Money::dollars(200'000), Percent::whole(25));
    EXPECT_EQ(price, Money::dollars(250'000));
    EXPECT_EQ(marginOf(Money::dollars(200'000), price), Percent::whole(20));
    EXPECT_EQ(markupOf(Money::dollars(200'000), price), Percent::whole(25));
}

TEST(Profit, MarginIsOnPrice) {
    EXPECT_EQ(priceAtMargin(Money::dollars(200'000), Percent::whole(20)).value(),
        Money::dollars(250'000));
    EXPECT_EQ(priceAtMargin(Money::dollars(100), Percent::whole(50)).value(), Money::dollars(200));
    EXPECT_EQ(priceAtMargin(Money::dollars(100), Percent()).value(), Money::dollars(100));
    // 100 / 0.67 = 149.2537
    EXPECT_EQ(priceAtMargin(Money::dollars(100), Percent::whole(33)).value(), Money::cents(14925));
}

TEST(Profit, AMarginOfEverythingIsRefused) {
    for (const int percent : {100, 101, 250}) {
        const auto price = priceAtMargin(Money::dollars(1), Percent::whole(percent));
        ASSERT_FALSE(price.ok());
        EXPECT_THAT(price.error().sentence, ::testing::HasSubstr("has to be under 100 %"));
        EXPECT_FALSE(markupFor(Percent::whole(percent)).ok());
    }
}

/// g / (1 - g), printed to a tenth: 10 -> 11.1, 15 -> 17.6, 20 -> 25, 25 -> 33.3, 30 -> 42.9,
/// 40 -> 66.7, 50 -> 100 [calc, as every trade table has it].
TEST(Profit, MarkupForAMargin) {
    const auto markup
        = [](int margin) { return markupFor(Percent::whole(margin)).value().basisPoints(); };
    EXPECT_EQ(markup(10), 1111);
    EXPECT_EQ(markup(15), 1765);
    EXPECT_EQ(markup(20), 2500);
    EXPECT_EQ(markup(25), 3333);
    EXPECT_EQ(markup(30), 4286);
    EXPECT_EQ(markup(40), 6667);
    EXPECT_EQ(markup(50), 10'000);
}

TEST(Profit, BothWaysGiveOnePrice) {
    for (int margin = 0; margin < 60; ++margin) {
        const Money cost = Money::cents(1'234'500);
        const Money byMargin = priceAtMargin(cost, Percent::whole(margin)).value();
        const Money byMarkup = priceAtMarkup(cost, markupFor(Percent::whole(margin)).value());
        // The markup is rounded to a hundredth of a percent: half of that of the cost.
        EXPECT_LE(std::abs((byMargin - byMarkup).cents()), 62) << margin;
        EXPECT_EQ(marginOf(cost, byMargin), Percent::whole(margin));
    }
}

TEST(Profit, ALossIsANegativeShare) {
    EXPECT_EQ(markupOf(Money::dollars(100), Money::dollars(90)), Percent::whole(-10));
    EXPECT_EQ(marginOf(Money::dollars(100), Money::dollars(80)), Percent::whole(-25));
    EXPECT_EQ(markupOf(Money(), Money::dollars(80)), Percent());
    EXPECT_EQ(marginOf(Money::dollars(80), Money()), Percent());
}

} // namespace
} // namespace miterbook
