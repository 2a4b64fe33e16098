// SPDX-License-Identifier: GPL-3.0-or-later
#include "small_shop.h"

#include <gmock/gmock.h>

namespace miterbook {
namespace {

using ::testing::ElementsAre;
using ::testing::HasSubstr;

/// One 16 ft base stick ($16.00) and three 8 ft casing pieces ($23.00), an hour for each base
/// source.
Takeoff smallTakeoff(const SmallShop& shop) {
    Takeoff takeoff;
    takeoff.tasks = {taskOf(Task::pictureFrameWindow, Quantity::count(2), 1),
        taskOf(Task::base, Quantity::count(16), 2)};
    takeoff.pieces = {pieceOf(PieceOfWork::windows, shop.casing, Length::feet(8), 2, 1),
        pieceOf(PieceOfWork::doors, shop.casing, Length::feet(8), 1, 3),
        pieceOf(PieceOfWork::base, shop.base, Length::feet(16), 1, 2)};
    return takeoff;
}

class EstimateTest : public ::testing::Test {
protected:
    EstimateTest() {
        m_shop.addRate(Task::pictureFrameWindow, 30);
        m_shop.addRate(Task::base, 3);
        m_takeoff = smallTakeoff(m_shop);
    }
    Estimate made(int floorArea = 0) const {
        return estimateOf(m_takeoff, m_shop, m_setup, floorArea);
    }

    SmallShop m_shop;
    Takeoff m_takeoff;
    BidSetup m_setup = plainSetup();
};

TEST_F(EstimateTest, LabourAndMaterialByPieceOfWork) {
    const Estimate result = made();
    EXPECT_EQ(result.crewRate, Money::dollars(60));
    EXPECT_TRUE(result.problems.empty());
    ASSERT_EQ(result.works.size(), 3U);
    EXPECT_EQ(result.works[0].work, PieceOfWork::doors);
    EXPECT_EQ(result.works[0].material, Money::cents(767)); // a third of 23.00
    EXPECT_EQ(result.works[0].labour, Money());
    EXPECT_EQ(result.works[1].material, Money::cents(1533)); // two thirds
    EXPECT_EQ(result.works[1].labour, Money::dollars(60));
    EXPECT_EQ(result.works[2].material, Money::dollars(16));
    EXPECT_EQ(result.works[2].labour, Money::dollars(48)); // 16 LF x 3 min
    EXPECT_EQ(result.total.hours, Hours::minutes(108));
    EXPECT_EQ(result.total.price, Money::dollars(60 + 48 + 23 + 16));
    EXPECT_EQ(result.markup, Percent());
}

TEST_F(EstimateTest, PartsAndGoodsAreMaterial) {
    m_shop.addPart(PartUse::newel, Money::dollars(100));
    m_shop.addPart(PartUse::passageSet, Money::dollars(25), true);
    m_takeoff.parts = {{PieceOfWork::stairs, PartUse::newel, 2, sourceAt(9, "Stair")},
        {PieceOfWork::hardware, PartUse::passageSet, 3, sourceAt(3, "D1")}};
    m_takeoff.goods = {{PieceOfWork::builtIns, Money::dollars(450), sourceAt(10, "Mantel")}};
    const Estimate result = made();
    EXPECT_EQ(workOf(result, PieceOfWork::stairs).material, Money::dollars(200));
    EXPECT_EQ(workOf(result, PieceOfWork::hardware), WorkTotal()); // the builder supplies them
    EXPECT_EQ(workOf(result, PieceOfWork::builtIns).material, Money::dollars(450));
    EXPECT_EQ(result.total.material, Money::dollars(39 + 200 + 450));
}

TEST_F(EstimateTest, TaxIsOnAllMaterialTogether) {
    m_shop.setTax(Percent::basisPoints(825));
    const Estimate result = made();
    EXPECT_EQ(result.total.material, Money::cents(3900 + 322)); // 8.25 % of 39.00 is 3.2175
    EXPECT_EQ(workOf(result, PieceOfWork::base).material, Money::cents(1600 + 132));
}

TEST_F(EstimateTest, ConsumablesGoByRunningFeet) {
    m_shop.addConsumable(Money::dollars(10), 100);
    m_shop.addConsumable(Money::dollars(5), 20);
    const Estimate result = made();
    // 40 ft: 4.00 and 10.00, shared 8 : 16 : 16
    EXPECT_EQ(result.total.consumables, Money::dollars(14));
    EXPECT_EQ(workOf(result, PieceOfWork::doors).consumables, Money::cents(280));
    EXPECT_EQ(workOf(result, PieceOfWork::base).consumables, Money::cents(560));
}

TEST_F(EstimateTest, OverheadIsOnLabourMaterialAndConsumables) {
    m_shop.addConsumable(Money::dollars(10), 40);
    m_setup.overhead = Percent::whole(10);
    const Estimate result = made();
    EXPECT_EQ(result.total.overhead, Money::cents(1570)); // of 108 + 39 + 10
    EXPECT_EQ(result.total.cost(), Money::cents(17270));
}

TEST_F(EstimateTest, ContingencyIsOnTheSameAndEarnsProfitButNoOverhead) {
    m_shop.addConsumable(Money::dollars(10), 40);
    m_setup.overhead = Percent::whole(10);
    m_setup.contingency = Percent::whole(5);
    m_setup.profit = Percent::whole(20);
    const Estimate result = made();
    EXPECT_EQ(result.total.overhead, Money::cents(1570));
    EXPECT_EQ(result.total.contingency, Money::cents(785)); // of 108 + 39 + 10
    EXPECT_EQ(result.total.foreseen(), Money::cents(17270));
    EXPECT_EQ(result.total.cost(), Money::cents(18055));
    EXPECT_EQ(result.total.price, Money::cents(21666)); // 180.55 x 1.2
}

TEST_F(EstimateTest, DeliveryIsSharedOverTheMaterialAndNotTaxed) {
    const Estimate without = made();
    m_setup.delivery = Money::dollars(13);
    const Estimate with = made();
    EXPECT_EQ(with.total.material - without.total.material, Money::dollars(13));
    Money shares;
    for (const WorkTotal& work : with.works)
        shares += work.material - workOf(without, work.work).material;
    EXPECT_EQ(shares, Money::dollars(13));
    EXPECT_EQ(with.total.labour, without.total.labour);
}

TEST_F(EstimateTest, NothingIsDeliveredWhereNothingIsBought) {
    m_takeoff.pieces.clear();
    m_takeoff.parts.clear();
    m_takeoff.goods.clear();
    m_setup.delivery = Money::dollars(13);
    EXPECT_EQ(made().total.material, Money());
}

TEST_F(EstimateTest, MarkupAndMarginAreNeverTheSame) {
    m_setup.profit = Percent::whole(25);
    Estimate result = made(); // cost 147.00
    EXPECT_EQ(result.total.price, Money::cents(18375));
    EXPECT_EQ(result.total.profit, Money::cents(3675));
    EXPECT_EQ(result.markup, Percent::whole(25));
    EXPECT_EQ(result.margin, Percent::whole(20));
    m_setup.profitKind = ProfitKind::marginOnPrice;
    result = made();
    EXPECT_EQ(result.total.price, Money::dollars(196));
    EXPECT_EQ(result.markup, Percent::basisPoints(3333));
    EXPECT_EQ(result.margin, Percent::whole(25));
}

TEST_F(EstimateTest, AMarginOfEverythingIsAProblemNotACrash) {
    m_setup.profitKind = ProfitKind::marginOnPrice;
    m_setup.profit = Percent::hundred();
    const Estimate result = made();
    EXPECT_EQ(result.total.profit, Money());
    EXPECT_THAT(result.problems, ElementsAre(HasSubstr("has to be under 100 %")));
}

TEST_F(EstimateTest, DollarsAnHourAndASquareFoot) {
    m_setup.profit = Percent::whole(25);
    const Estimate result = made(100);
    // (183.75 - 39.00) / 1.8 h
    EXPECT_EQ(result.perManHour, Money::cents(8042));
    EXPECT_EQ(result.perSquareFoot, Money::cents(184));
    EXPECT_EQ(made().perSquareFoot, Money());
}

TEST_F(EstimateTest, AnEmptyTakeoffCostsNothing) {
    m_takeoff = {};
    const Estimate result = made(2400);
    EXPECT_TRUE(result.works.empty());
    EXPECT_EQ(result.total, WorkTotal());
    EXPECT_EQ(result.perManHour, Money());
    EXPECT_TRUE(result.problems.empty());
}

TEST_F(EstimateTest, SaysWhatKeepsThePriceFromBeingRight) {
    m_takeoff.remarks = {{Remark::Weight::warning, {}, "A warning."},
        {Remark::Weight::problem, {}, "W9 has no casing."}};
    m_takeoff.tasks.push_back(taskOf(Task::mantel, Quantity::count(1), 5));
    m_takeoff.parts = {{PieceOfWork::stairs, PartUse::baluster, 30, sourceAt(9, "Stair")}};
    m_takeoff.pieces.push_back(pieceOf(PieceOfWork::base, m_shop.base, Length::feet(20), 1, 2));
    m_shop.prices.of<CrewMember>() = {};
    const Estimate result = made();
    EXPECT_THAT(result.problems,
        ElementsAre("W9 has no casing.",
            "The book has no active crew with a wage; labour costs nothing here.",
            "The book has no labour rate for \"mantel\"; it takes no hours here.",
            HasSubstr("Flat base: 1 piece of"),
            "The book has no price for \"baluster\"; 30 of them cost nothing here."));
}

TEST_F(EstimateTest, AProfileWithoutAStickPlanIsSaid) {
    const Estimate result = estimate(m_takeoff, {}, m_shop.prices, m_setup, 0);
    EXPECT_EQ(result.total.material, Money());
    EXPECT_THAT(result.problems,
        ElementsAre(HasSubstr("sticks of Flat casing are not planned"), HasSubstr("Flat base")));
}

TEST_F(EstimateTest, SlowConditionsCostTime) {
    m_shop.addFactor(Condition::stainGrade, 150);
    m_takeoff.tasks[0].conditions.add(Condition::stainGrade);
    EXPECT_EQ(workOf(made(), PieceOfWork::windows).hours, Hours::minutes(90));
}

} // namespace
} // namespace miterbook
