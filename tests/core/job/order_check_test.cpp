// SPDX-License-Identifier: GPL-3.0-or-later
// A builder's order against the price sheet: the difference explained by what the sheet has.
#include "job/order_check.h"

#include "support/small_book.h"

#include <gmock/gmock.h>

#include <random>

namespace miterbook {
namespace {

using testing::ElementsAre;
using testing::HasSubstr;

constexpr Id<Variant> farmhouseOfOrder{501};
constexpr Id<Variant> crownOfOrder{511};
constexpr Id<Variant> benchOfOrder{512};
constexpr Id<Variant> loftOfOrder{513};

class PurchaseOrder : public testing::Test {
protected:
    PurchaseOrder() {
        m_prices.columns = {
            {{}, "As drawn", Money::dollars(9000)}, {farmhouseOfOrder, "B", Money::dollars(9600)}};
        m_prices.options = {
            {crownOfOrder, "Crown pack", {Money::dollars(1400), Money::dollars(1450)}},
            {benchOfOrder, "Window benchOfOrder", {Money::dollars(320), Money::dollars(320)}},
            {loftOfOrder, "Loft rail left out", {Money::dollars(-700), Money::dollars(-710)}}};
        m_house.id = Id<House>(70);
        m_house.work = Id<Plan>(71);
        m_house.name = "Lot 7";
        m_house.elevation = farmhouseOfOrder;
        m_house.options = {crownOfOrder};
    }
    OrderCheck check(int dollars) const {
        const auto checked = checkOrder(m_book, m_prices, m_house, Money::dollars(dollars));
        EXPECT_TRUE(checked.ok());
        return checked.valueOr({});
    }

    Book m_book = smallBook();
    PlanPrices m_prices;
    House m_house;
};

TEST_F(PurchaseOrder, ThatAgreesNeedsNoWords) {
    const OrderCheck agreed = check(11'050);
    EXPECT_EQ(agreed.difference(), Money());
    EXPECT_TRUE(agreed.explanations.empty());
    const std::vector<OrderCheck::Part> parts{
        {"Plan price, elevation B", Money::dollars(9600)}, {"Crown pack", Money::dollars(1450)}};
    EXPECT_EQ(agreed.parts, parts);
}

TEST_F(PurchaseOrder, AnOptionLeftOut) {
    EXPECT_THAT(
        check(9600).explanations, ElementsAre("The order leaves out \"Crown pack\" ($1,450.00)."));
}

TEST_F(PurchaseOrder, AnOptionOrderedBesides) {
    EXPECT_THAT(check(11'370).explanations,
        ElementsAre("The order has \"Window benchOfOrder\" besides ($320.00)."));
    EXPECT_EQ(check(11'370).difference(), Money::dollars(320));
}

TEST_F(PurchaseOrder, TwoOptionsAtOnce) {
    EXPECT_THAT(check(9920).explanations,
        ElementsAre(
            "The order leaves out \"Crown pack\" ($1,450.00) and has \"Window benchOfOrder\" "
            "besides ($320.00)."));
}

TEST_F(PurchaseOrder, AnotherElevationWithTheHousesOptions) {
    EXPECT_THAT(check(10'400).explanations, ElementsAre("The order is for the plan as drawn."));
    EXPECT_THAT(check(10'720).explanations, // 9,000 + 1,400 + 320
        ElementsAre("The order is for the plan as drawn and has \"Window benchOfOrder\" besides "
                    "($320.00)."));
}

TEST_F(PurchaseOrder, WhatNothingExplainsIsSaid) {
    EXPECT_THAT(check(11'051).explanations,
        ElementsAre("No option, elevation, sent bid or extra explains the difference of $1.00: ask "
                    "the builder."));
}

TEST_F(PurchaseOrder, ASentBidOfTheHouse) {
    SentBid bid;
    bid.id = Id<SentBid>(80);
    bid.job = m_house.work;
    bid.number = 4;
    bid.revision = 2;
    bid.date = std::chrono::year(2026) / 3 / 2;
    bid.amount = Money::dollars(11'111);
    m_book.jobs.of<SentBid>().put(bid);
    EXPECT_THAT(check(11'111).explanations,
        ElementsAre("The order is what bid 4, revision 2 of 3/2/2026 says."));
}

TEST_F(PurchaseOrder, ExtrasThatWereAgreed) {
    Extra extra;
    extra.id = Id<Extra>(81);
    extra.house = m_house.id;
    extra.state = ExtraState::approved;
    extra.price = Money::dollars(480);
    m_book.jobs.of<Extra>().put(extra);
    EXPECT_THAT(check(11'530).explanations,
        ElementsAre("The order takes in the extras agreed on the house ($480.00)."));
}

TEST_F(PurchaseOrder, AnOptionThatIsGoneFromThePlanIsSaid) {
    m_house.options = {Id<Variant>(999)};
    const auto checked = checkOrder(m_book, m_prices, m_house, Money::dollars(1));
    ASSERT_FALSE(checked.ok());
    EXPECT_THAT(checked.error().sentence, HasSubstr("no price for Lot 7"));
}

TEST_F(PurchaseOrder, PartsAddUpAndEveryTurnIsFound) {
    std::mt19937 random(3);
    for (int run = 0; run < 200; ++run) {
        m_house.elevation = random() % 2 == 0 ? farmhouseOfOrder : Id<Variant>();
        m_house.options.clear();
        Selection ordered{m_house.elevation, {}};
        for (const Id<Variant> option : {crownOfOrder, benchOfOrder, loftOfOrder}) {
            if (random() % 2 == 0)
                m_house.options.push_back(option);
            if (random() % 2 == 0)
                ordered.options.push_back(option);
        }
        const Money total = *lotPrice(m_prices, ordered);
        const OrderCheck checked = *checkOrder(m_book, m_prices, m_house, total);
        Money sum;
        for (const OrderCheck::Part& part : checked.parts)
            sum += part.amount;
        EXPECT_EQ(sum, checked.sheet);
        if (checked.difference() != Money()) {
            EXPECT_THAT(checked.explanations.front(), HasSubstr("The order "));
        }
    }
}

} // namespace
} // namespace miterbook
