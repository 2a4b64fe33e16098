// SPDX-License-Identifier: GPL-3.0-or-later
#include "bid/estimate.h"
#include "book/starter_book.h"
#include "support/sample_house.h"

#include <gtest/gtest.h>

namespace miterbook {
namespace {

/// The sample house as the starter book prices it.
struct SampleBid {
    IdSource ids;
    PriceBook prices = starterBook(ids);
    SampleHouse house = sampleHouse(prices, ids);

    Takeoff takeoff(const Selection& selection = {}) const {
        return takeOff(house.whole(selection), prices, prices.terms().tripsPerHouse);
    }
    Estimate made(const Selection& selection = {}, Effort effort = Effort::quick) const {
        const Takeoff all = takeoff(selection);
        return estimate(all, planAllSticks(stickNeeds(all), prices, effort), prices,
            setupFrom(prices.terms(), house.plan.id), house.plan.floorArea);
    }
};

/// A two-storey house of 2,400 sf with 18 doors, 18 windows, 650 LF of base and one stair comes to
/// about 85 to 110 man-hours [common practice].
TEST(SampleBid, TakesAboutEightyFiveToAHundredAndTenHours) {
    const Estimate result = SampleBid().made();
    std::string lines;
    for (const EstimateLine& line : result.lines)
        lines += std::string(word(line.task)) + ": " + std::to_string(line.quantity.toDouble())
            + ", " + std::to_string(line.hours.toDouble()) + " h\n";
    EXPECT_GE(result.total.hours, Hours::whole(85)) << lines;
    EXPECT_LE(result.total.hours, Hours::whole(110)) << lines;
}

TEST(SampleBid, HasNoProblems) {
    const Estimate result = SampleBid().made();
    for (const std::string& problem : result.problems)
        ADD_FAILURE() << problem;
    EXPECT_GT(result.total.material, Money::dollars(1000));
    EXPECT_GT(result.total.consumables, Money());
    EXPECT_EQ(result.markup, Percent::whole(20));
}

TEST(SampleBid, AThoroughPlanIsNoDearer) {
    const SampleBid bid;
    const Takeoff takeoff = bid.takeoff();
    const auto needs = stickNeeds(takeoff);
    const auto quick = planAllSticks(needs, bid.prices, Effort::quick);
    const auto thorough = planAllSticks(needs, bid.prices, Effort::thorough);
    ASSERT_EQ(thorough.size(), needs.size());
    for (std::size_t i = 0; i < thorough.size(); ++i) {
        EXPECT_LE(thorough[i].cost, quick[i].cost);
        EXPECT_LE(thorough[i].bound, thorough[i].cost);
        const Money cheapest = bid.prices.stockedSticks(needs[i].profile).front().price;
        EXPECT_LT(thorough[i].cost - thorough[i].bound, cheapest)
            << bid.prices.profileName(needs[i].profile);
    }
}

/// The crown pack is priced as its difference: crown's own hours and material, and nothing else
/// moves but the shares of what is reckoned on the whole.
TEST(SampleBid, AnOptionIsTheDifferenceOfTwoPrices) {
    const SampleBid bid;
    const Estimate plain = bid.made();
    const Estimate pack = bid.made({{}, {bid.house.crownPack}});
    const auto labour = [](const Estimate& estimate, PieceOfWork of) {
        Money sum;
        for (const WorkTotal& work : estimate.works)
            sum += work.work == of ? work.labour : Money();
        return sum;
    };
    EXPECT_EQ(labour(plain, PieceOfWork::crown), Money());
    EXPECT_GT(labour(pack, PieceOfWork::crown), Money());
    EXPECT_EQ(labour(plain, PieceOfWork::doors), labour(pack, PieceOfWork::doors));
    EXPECT_GT(pack.total.price, plain.total.price);
    EXPECT_EQ(pack.total.labour - plain.total.labour, labour(pack, PieceOfWork::crown));
    const Money cost = pack.total.cost() - plain.total.cost();
    const Money price = pack.total.price - plain.total.price;
    EXPECT_LE(std::abs((price - priceAtMarkup(cost, Percent::whole(20))).cents()), 1);
}

TEST(SampleBid, PiecePricesOfTheStarterBookMakeAPrice) {
    const SampleBid bid;
    const Takeoff takeoff = bid.takeoff();
    BidSetup setup = setupFrom(bid.prices.terms(), bid.house.plan.id);
    setup.pricing = Pricing::piecePrices;
    const Estimate byPiece = estimate(takeoff,
        planAllSticks(stickNeeds(takeoff), bid.prices, Effort::quick), bid.prices, setup, 2400);
    const Estimate byCost = bid.made();
    EXPECT_EQ(byPiece.total.cost(), byCost.total.cost());
    // Starter piece prices and starter rates tell about the same story: within 15 %.
    EXPECT_NEAR(static_cast<double>(byPiece.total.price.cents()),
        static_cast<double>(byCost.total.price.cents()),
        0.15 * static_cast<double>(byCost.total.price.cents()));
}

} // namespace
} // namespace miterbook
