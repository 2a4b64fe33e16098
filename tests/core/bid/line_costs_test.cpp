// SPDX-License-Identifier: GPL-3.0-or-later
// Each line at its cost and at its piece price, and a line switched to the other way.
#include "bid/line_costs.h"
#include "small_shop.h"

#include <gmock/gmock.h>

#include <random>

namespace miterbook {
namespace {

using testing::ElementsAre;
using testing::HasSubstr;

class BothWays : public testing::Test {
protected:
    BothWays() {
        m_shop.addRate(Task::pictureFrameWindow, 30);
        m_shop.addRate(Task::longSide, 6);
        m_shop.addRate(Task::base, 3);
        m_takeoff.tasks = {taskOf(Task::pictureFrameWindow, Quantity::count(1), 1),
            taskOf(Task::longSide, Quantity::count(2), 1),
            taskOf(Task::pictureFrameWindow, Quantity::count(1), 2),
            taskOf(Task::base, Quantity::count(20), 3)};
        m_takeoff.pieces = {pieceOf(PieceOfWork::windows, m_shop.casing, Length::feet(8), 1, 1),
            pieceOf(PieceOfWork::base, m_shop.base, Length::feet(16), 1, 3)};
    }
    std::vector<StickPlan> sticks() const {
        return planAllSticks(stickNeeds(m_takeoff), m_shop.prices, Effort::quick);
    }
    std::vector<LineBothWays> lines() {
        m_estimate = estimate(m_takeoff, sticks(), m_shop.prices, m_setup, 0);
        return linesBothWays(m_estimate, m_takeoff, sticks(), m_shop.prices, m_setup);
    }

    SmallShop m_shop;
    Takeoff m_takeoff;
    BidSetup m_setup = plainSetup();
    Estimate m_estimate;
};

TEST_F(BothWays, MaterialGoesToTheTasksOfItsRowByTheirHours) {
    const auto all = lines();
    ASSERT_EQ(all.size(), 3U); // windows, their long sides, base
    // The 8.00 stick of window 1: 30 of its 42 minutes are the frame's. 5.71 and 2.29. [calc]
    EXPECT_EQ(all[0].cost, Money::cents(6000 + 571));
    EXPECT_EQ(all[1].cost, Money::cents(1200 + 229));
    EXPECT_EQ(all[2].cost, Money::cents(6000 + 1600));
    EXPECT_EQ(all[2].byCost, all[2].cost); // no profit is asked
    EXPECT_FALSE(all[0].byPiece);
    EXPECT_EQ(bothWaysInWords(all[0], "$"), "");
}

TEST_F(BothWays, SaysWhichLinesLoseMoney) {
    m_setup.profit = Percent::whole(20);
    m_shop.addPiecePrice(Task::pictureFrameWindow, Money::dollars(30));
    m_shop.addPiecePrice(Task::longSide, Money::cents(800));
    m_shop.addPiecePrice(Task::base, Money::dollars(5));
    const auto all = lines();
    EXPECT_TRUE(all[0].loses());
    EXPECT_EQ(bothWaysInWords(all[0], "$"), "loses $5.71 at your piece price");
    EXPECT_EQ(bothWaysInWords(all[1], "$"), "covers its cost, $1.15 short of the profit asked");
    EXPECT_EQ(bothWaysInWords(all[2], "$"), "brings $8.80 more than cost and profit");
    EXPECT_THAT(bothWaysSummary(m_estimate, all, Shop{}),
        ElementsAre("At your piece prices these lose $5.71 in all: window, picture frame.",
            "These carry the house, $8.80 over cost and profit: base, one piece."));
}

TEST_F(BothWays, NamesATaskOnceHoweverManyLinesItHas) {
    m_shop.addPiecePrice(Task::pictureFrameWindow, Money::dollars(30));
    auto all = lines();
    all.push_back(all[0]); // as under other conditions
    m_estimate.lines.push_back(m_estimate.lines[0]);
    EXPECT_THAT(bothWaysSummary(m_estimate, all, Shop{}),
        ElementsAre(
            "At your piece prices these lose $11.42 in all: window, picture frame (2 lines)."));
}

TEST_F(BothWays, ALineIsSwitchedToTheOtherWay) {
    m_shop.addPiecePrice(Task::base, Money::dollars(5));
    EXPECT_FALSE(lines()[2].isByPiece);
    const Money byCost = m_estimate.total.price;
    m_setup = withOtherWay(m_setup, Task::base);
    EXPECT_EQ(wayOf(m_setup, Task::base), Pricing::piecePrices);
    EXPECT_TRUE(lines()[2].isByPiece);
    // Base brought 76.00 by its cost and brings 100.00 by the foot.
    EXPECT_EQ(m_estimate.total.price, byCost + Money::dollars(24));
    EXPECT_EQ(m_estimate.lines[2].price, Money::dollars(100));
    EXPECT_TRUE(m_estimate.notes.empty()); // nothing lacks a price that was asked for
    m_setup = withOtherWay(m_setup, Task::base);
    EXPECT_TRUE(m_setup.otherWay.empty());
    EXPECT_EQ(lines()[2].isByPiece, false);
    EXPECT_EQ(m_estimate.total.price, byCost);
}

TEST_F(BothWays, ALineIsSwitchedToCostInABidByThePiece) {
    m_shop.addPiecePrice(Task::base, Money::dollars(5));
    m_shop.addPiecePrice(Task::pictureFrameWindow, Money::dollars(90));
    m_setup.pricing = Pricing::piecePrices;
    m_setup = withOtherWay(m_setup, Task::base);
    const auto all = lines();
    EXPECT_TRUE(all[0].isByPiece);
    EXPECT_FALSE(all[2].isByPiece);
    EXPECT_EQ(m_estimate.lines[2].price, Money::cents(7600));
    ASSERT_EQ(m_estimate.notes.size(), 1U); // of the long sides alone: base was switched on purpose
    EXPECT_THAT(m_estimate.notes.front(), HasSubstr("piece price: casing side over 5 ft."));
}

TEST_F(BothWays, LinesAddUpToTheirPieceOfWork) {
    std::mt19937 random(11);
    const auto upTo = [&](unsigned most) { return static_cast<int>(random() % (most + 1)); };
    m_shop.addConsumable(Money::cents(1999), 130);
    m_shop.setTax(Percent::basisPoints(825));
    for (int run = 0; run < 200; ++run) {
        SCOPED_TRACE(run);
        m_setup.overhead = Percent::basisPoints(upTo(3000));
        m_setup.contingency = Percent::basisPoints(upTo(1500));
        m_setup.delivery = Money::cents(upTo(40'000));
        m_setup.profitKind = run % 2 == 0 ? ProfitKind::markupOnCost : ProfitKind::marginOnPrice;
        m_setup.profit = Percent::basisPoints(upTo(5000));
        m_takeoff.tasks.clear();
        m_takeoff.pieces.clear();
        for (int i = upTo(12); i > 0; --i) {
            const Task task = upTo(1) == 0 ? Task::pictureFrameWindow : Task::longSide;
            m_takeoff.tasks.push_back(taskOf(task, Quantity::thousandths(upTo(9000)), upTo(4)));
            m_takeoff.pieces.push_back(pieceOf(PieceOfWork::windows, m_shop.casing,
                Length::sixtyFourths(1 + upTo(6000)), 1 + upTo(3), upTo(5)));
        }
        m_takeoff.tasks.push_back(taskOf(Task::base, Quantity::count(1), 7));
        const auto all = lines();
        for (const WorkTotal& work : m_estimate.works) {
            Money sum;
            for (std::size_t i = 0; i < all.size(); ++i) {
                if (m_estimate.lines[i].work == work.work)
                    sum += all[i].cost;
            }
            const bool hasLines = std::ranges::any_of(
                m_estimate.lines, [&](const EstimateLine& line) { return line.work == work.work; });
            if (hasLines) {
                EXPECT_EQ(sum, work.cost() - work.allowances);
            }
        }
    }
}

} // namespace
} // namespace miterbook
