// SPDX-License-Identifier: GPL-3.0-or-later
#include "small_shop.h"

#include <gmock/gmock.h>

namespace miterbook {
namespace {

using ::testing::ElementsAre;

class PiecePrices : public ::testing::Test {
protected:
    PiecePrices() {
        m_shop.addRate(Task::pictureFrameWindow, 30);
        m_shop.addRate(Task::longSide, 6);
        m_shop.addRate(Task::base, 3);
        m_shop.addPiecePrice(Task::pictureFrameWindow, Money::dollars(90));
        m_setup.pricing = Pricing::piecePrices;
        m_setup.profit = Percent::whole(20);
    }
    Estimate made() const { return estimateOf(m_takeoff, m_shop, m_setup); }

    SmallShop m_shop;
    Takeoff m_takeoff;
    BidSetup m_setup = plainSetup();
};

TEST_F(PiecePrices, CoverLabourAndMaterialOfTheirRows) {
    m_takeoff.tasks = {taskOf(Task::pictureFrameWindow, Quantity::count(2), 1)};
    m_takeoff.pieces = {pieceOf(PieceOfWork::windows, m_shop.casing, Length::feet(8), 2, 1)};
    const Estimate result = made();
    EXPECT_EQ(result.pricing, Pricing::piecePrices);
    EXPECT_EQ(result.total.price, Money::dollars(180));
    EXPECT_EQ(result.total.cost(), Money::dollars(60 + 15));
    EXPECT_EQ(result.total.profit, Money::dollars(105));
    EXPECT_EQ(result.lines[0].price, Money::dollars(180));
    EXPECT_TRUE(result.notes.empty());
}

TEST_F(PiecePrices, WhatHasNoneIsPricedByItsCost) {
    m_takeoff.tasks = {taskOf(Task::pictureFrameWindow, Quantity::count(1), 1),
        taskOf(Task::longSide, Quantity::count(2), 1), taskOf(Task::base, Quantity::count(20), 2)};
    m_takeoff.pieces = {pieceOf(PieceOfWork::windows, m_shop.casing, Length::feet(8), 1, 1),
        pieceOf(PieceOfWork::base, m_shop.base, Length::feet(16), 1, 2)};
    const Estimate result = made();
    // The window's casing is in its piece price; its long sides bring 12 min x 1.2.
    const WorkTotal windows = workOf(result, PieceOfWork::windows);
    EXPECT_EQ(windows.price, Money::cents(9000 + 1440));
    EXPECT_EQ(windows.material, Money::dollars(8));
    EXPECT_EQ(windows.profit, Money::cents(9000 - 3000 - 800 + 240));
    // Base has no piece price: labour 60.00 and stick 16.00, x 1.2.
    const WorkTotal base = workOf(result, PieceOfWork::base);
    EXPECT_EQ(base.price, Money::cents(9120));
    EXPECT_EQ(base.profit, Money::cents(1520));
    EXPECT_EQ(result.lines[0].price, Money::dollars(90));
    EXPECT_EQ(result.lines[1].price, Money::cents(1440));
    EXPECT_EQ(result.lines[2].price, Money::cents(9120));
    EXPECT_THAT(result.notes,
        ElementsAre("Priced by cost, for want of a piece price: casing side over 5 ft, base, one "
                    "piece."));
}

TEST_F(PiecePrices, MaterialOfARowWithoutOneIsNotGivenAway) {
    m_takeoff.tasks = {taskOf(Task::pictureFrameWindow, Quantity::count(1), 1),
        taskOf(Task::longSide, Quantity::count(1), 2)};
    m_takeoff.pieces = {pieceOf(PieceOfWork::windows, m_shop.casing, Length::feet(8), 1, 1),
        pieceOf(PieceOfWork::windows, m_shop.casing, Length::feet(8), 1, 2)};
    // 16 ft stick 15.00: 7.50 each; the second row brings (6.00 + 7.50) x 1.2.
    EXPECT_EQ(made().total.price, Money::cents(9000 + 1620));
}

TEST_F(PiecePrices, GoodsBoughtOutrightArePricedByTheirCost) {
    m_takeoff.tasks = {taskOf(Task::pictureFrameWindow, Quantity::count(1), 1)};
    m_takeoff.goods = {{PieceOfWork::windows, Money::dollars(100), sourceAt(1, "W1")}};
    EXPECT_EQ(made().total.price, Money::dollars(90 + 120));
}

TEST_F(PiecePrices, MayBringALoss) {
    m_shop.addPiecePrice(Task::base, Money::cents(50));
    m_takeoff.tasks = {taskOf(Task::base, Quantity::count(100), 1)};
    const Estimate result = made();
    EXPECT_EQ(result.total.price, Money::dollars(50));
    EXPECT_EQ(result.total.profit, Money::dollars(-250));
    EXPECT_EQ(result.margin, Percent::whole(-500));
}

TEST_F(PiecePrices, DoNotTouchABidByCost) {
    m_takeoff.tasks = {taskOf(Task::pictureFrameWindow, Quantity::count(2), 1)};
    m_setup.pricing = Pricing::costAndProfit;
    const Estimate result = made();
    EXPECT_EQ(result.total.price, Money::dollars(72));
    EXPECT_EQ(result.lines[0].piecePrice, Money::dollars(180)); // shown beside it
    EXPECT_EQ(result.lines[0].price, Money());
}

} // namespace
} // namespace miterbook
