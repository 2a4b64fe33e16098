// SPDX-License-Identifier: GPL-3.0-or-later
// Minimum job, rounding up, allowances: what they do to a price, and that sums still hold.
#include "bid/price_rules.h"
#include "small_shop.h"

#include <gmock/gmock.h>

#include <random>

namespace miterbook {
namespace {

using testing::ElementsAre;

TEST(RuledPriceTest, MinimumThenRoundedUp) {
    EXPECT_EQ(ruledPrice(Money::cents(31'201), {}, {}).price, Money::cents(31'201));
    EXPECT_EQ(ruledPrice(Money::cents(31'201), {}, Money::dollars(5)).price, Money::dollars(315));
    EXPECT_EQ(ruledPrice(Money::dollars(315), {}, Money::dollars(5)).added, Money());
    const RuledPrice small = ruledPrice(
        Money::dollars(120), Money::cents(35'250), Money::dollars(10), "$");
    EXPECT_EQ(small.price, Money::dollars(360));
    EXPECT_EQ(small.added, Money::dollars(240));
    EXPECT_THAT(small.notes,
        ElementsAre("The minimum job of $352.50 raises the price by $232.50.",
            "Rounded up by $7.50 to a multiple of $10.00."));
    EXPECT_EQ(ruledPrice(Money(), Money::dollars(350), Money::dollars(10)).price, Money());
}

TEST(RuledPriceTest, NeverLowersAndAlwaysHitsTheMultiple) {
    std::mt19937 random(5);
    for (int i = 0; i < 2000; ++i) {
        const Money price = Money::cents(1 + static_cast<std::int64_t>(random() % 3'000'000));
        const Money minimum = Money::cents(static_cast<std::int64_t>(random() % 90'000));
        const Money step = Money::cents(1 + static_cast<std::int64_t>(random() % 10'000));
        const RuledPrice ruled = ruledPrice(price, minimum, step);
        EXPECT_EQ(ruled.price.cents() % step.cents(), 0);
        EXPECT_GE(ruled.price, std::max(price, minimum));
        EXPECT_LT(ruled.price, std::max(price, minimum) + step);
        EXPECT_EQ(ruled.price, price + ruled.added);
    }
}

class PriceRules : public testing::Test {
protected:
    PriceRules() {
        m_shop.addRate(Task::base, 3);
        m_shop.addRate(Task::pictureFrameWindow, 30);
        m_takeoff.tasks = {taskOf(Task::base, Quantity::count(30), 1),
            taskOf(Task::pictureFrameWindow, Quantity::count(1), 2)};
        m_setup.profit = Percent::whole(10);
    }
    Estimate made() const { return estimateOf(m_takeoff, m_shop, m_setup); }

    SmallShop m_shop;
    Takeoff m_takeoff;
    BidSetup m_setup = plainSetup();
};

TEST_F(PriceRules, TheMinimumIsSharedByPrice) {
    m_setup.minimum = Money::dollars(264); // 132 without: base 99, windows 33
    const Estimate result = made();
    EXPECT_EQ(result.total.price, Money::dollars(264));
    EXPECT_EQ(workOf(result, PieceOfWork::base).price, Money::dollars(198));
    EXPECT_EQ(workOf(result, PieceOfWork::windows).price, Money::dollars(66));
    EXPECT_EQ(result.total.profit, Money::dollars(144));
    EXPECT_EQ(result.margin, marginOf(Money::dollars(120), Money::dollars(264)));
    EXPECT_EQ(result.notes.size(), 1U);
}

TEST_F(PriceRules, AnAllowanceIsInThePriceAsItIs) {
    m_setup.allowances = {{"Mantel shelf", PieceOfWork::builtIns, Money::dollars(400)},
        {"Window stools", PieceOfWork::windows, Money::dollars(50)}};
    const Estimate result = made();
    EXPECT_EQ(result.total.price, Money::dollars(132 + 450)); // no overhead or profit on it
    EXPECT_EQ(result.total.profit, Money::dollars(12));
    EXPECT_EQ(result.total.allowances, Money::dollars(450));
    EXPECT_EQ(workOf(result, PieceOfWork::builtIns).price, Money::dollars(400));
    EXPECT_EQ(workOf(result, PieceOfWork::windows).cost(), Money::dollars(80));
}

TEST_F(PriceRules, RoundingLeavesANewPriceWithoutHours) {
    m_setup.roundTo = Money::dollars(25);
    EXPECT_EQ(made().total.price, Money::dollars(150));
    m_takeoff.tasks.clear();
    EXPECT_EQ(made().total.price, Money());
}

TEST_F(PriceRules, SumsHoldToTheCentUnderRandomRules) {
    std::mt19937 random(20261126);
    const auto upTo
        = [&](unsigned most) { return static_cast<std::int64_t>(random() % (most + 1)); };
    for (int run = 0; run < 300; ++run) {
        SCOPED_TRACE(run);
        m_takeoff.tasks = {taskOf(Task::base, Quantity::thousandths(upTo(90'000)), 1),
            taskOf(Task::pictureFrameWindow, Quantity::count(upTo(20)), 2)};
        m_setup.pricing = run % 2 == 0 ? Pricing::costAndProfit : Pricing::piecePrices;
        m_setup.profit = Percent::basisPoints(upTo(5000));
        m_setup.overhead = Percent::basisPoints(upTo(3000));
        m_setup.minimum = Money::cents(upTo(400'000));
        m_setup.roundTo = Money::cents(upTo(5'000));
        m_setup.allowances = {{"A", PieceOfWork::stairs, Money::cents(upTo(70'000))}};
        if (run % 3 == 0)
            m_shop.addPiecePrice(Task::base, Money::cents(1 + upTo(900)));
        const Estimate result = made();
        Money price;
        for (const WorkTotal& work : result.works) {
            EXPECT_EQ(work.price, work.cost() + work.profit);
            price += work.price;
        }
        EXPECT_EQ(price, result.total.price);
        EXPECT_GE(result.total.price, result.total.price > Money() ? m_setup.minimum : Money());
        if (m_setup.roundTo > Money()) {
            EXPECT_EQ(result.total.price.cents() % m_setup.roundTo.cents(), 0);
        }
    }
}

} // namespace
} // namespace miterbook
