// SPDX-License-Identifier: GPL-3.0-or-later
#include "bid/explain.h"
#include "small_shop.h"

#include <gmock/gmock.h>

namespace miterbook {
namespace {

using ::testing::Contains;
using ::testing::ElementsAre;
using ::testing::HasSubstr;
using ::testing::Not;

class Explain : public ::testing::Test {
protected:
    Explain() {
        m_shop.addRate(Task::pictureFrameWindow, 30);
        m_shop.addFactor(Condition::upperFloor, 104);
        m_shop.addFactor(Condition::radius, 300);
        Conditions upper;
        upper.add(Condition::upperFloor);
        m_takeoff.tasks = {taskOf(Task::pictureFrameWindow, Quantity::count(2), 4, upper),
            taskOf(Task::pictureFrameWindow, Quantity::count(1), 5, upper),
            taskOf(Task::pictureFrameWindow, Quantity::count(1), 6)};
        m_takeoff.tasks[0].what = "both faces";
        m_takeoff.pieces = {pieceOf(PieceOfWork::windows, m_shop.casing, Length::feet(8), 1, 4),
            pieceOf(PieceOfWork::doors, m_shop.casing, Length::feet(8), 1, 7)};
    }
    Estimate made() const { return estimateOf(m_takeoff, m_shop, m_setup); }
    std::vector<std::string> line(std::size_t index) const {
        const Estimate result = made();
        return explainLine(result.lines.at(index), m_takeoff, m_shop.prices, result.crewRate);
    }

    SmallShop m_shop;
    Takeoff m_takeoff;
    BidSetup m_setup = plainSetup();
};

TEST_F(Explain, ALineFromItsSourcesToItsLabour) {
    EXPECT_THAT(line(1),
        ElementsAre("W4: 2 each (both faces).", "W5: 1 each.",
            "Rate for window, picture frame: 30 min for one each (yours; our houses).",
            "Factor for upper floor: 104 %.", "1.57 h at $60.00 an hour is $94.00."));
    EXPECT_THAT(line(0), Contains("W6: 1 each."));
    EXPECT_THAT(line(0), Not(Contains(HasSubstr("Factor"))));
}

TEST_F(Explain, ManySourcesAreCounted) {
    for (int i = 0; i < 40; ++i)
        m_takeoff.tasks.push_back(taskOf(Task::pictureFrameWindow, Quantity::count(1), 100 + i));
    EXPECT_THAT(line(0), Contains("And 29 more; 41 each in all."));
}

TEST_F(Explain, ALineWithoutARate) {
    m_shop.prices.of<LabourRate>() = {};
    EXPECT_THAT(line(0), Contains("The book has no labour rate for \"window, picture frame\"."));
}

TEST_F(Explain, APiecePrice) {
    m_shop.addPiecePrice(Task::pictureFrameWindow, Money::dollars(90));
    EXPECT_THAT(line(1), Contains("At your piece price, 3 each at $90.00 is $270.00."));
}

TEST_F(Explain, TheCrewRate) {
    m_shop.prices.of<CrewMember>().put({Id<CrewMember>(99), "Ann Away", Money::dollars(1), false});
    m_shop.prices.of<Burden>().put({Id<Burden>(1), "FICA", Percent::basisPoints(765),
        Money::dollars(42), 2025, Origin::shop, {}});
    EXPECT_THAT(explainCrewRate(m_shop.prices),
        ElementsAre("Ola Brandt: $60.00 an hour.",
            "FICA: 7.65 % of wages and $42.00 a year for each, over 2000 hours (2025).",
            "An hour of one of the crew, on average, with burden: $64.61."));
    m_shop.prices.of<CrewMember>() = {};
    EXPECT_THAT(explainCrewRate(m_shop.prices), ElementsAre(HasSubstr("Nobody active")));
}

TEST_F(Explain, ThePriceBothWays) {
    m_setup.profit = Percent::whole(25);
    const auto sentences = explainPrice(made(), m_setup, "$");
    EXPECT_THAT(sentences, Contains("Asked for: 25 % markup on cost."));
    EXPECT_THAT(sentences, Contains(HasSubstr("25 % markup on cost and 20 % margin on price")));
    EXPECT_THAT(sentences, Contains(HasSubstr("Material by the stick plan")));
    EXPECT_THAT(sentences, Contains("Cost: $139.00.")); // 124 min and a 16 ft stick
    EXPECT_EQ(sentences.back(), "Price: $173.75.");
    m_setup.waste = Percent::whole(5);
    EXPECT_THAT(
        explainPrice(made(), m_setup), Contains(HasSubstr("running lengths and 5 % waste")));
}

TEST_F(Explain, ThePriceByPiecePricesSaysWhatHasNone) {
    m_setup.pricing = Pricing::piecePrices;
    const auto sentences = explainPrice(made(), m_setup);
    EXPECT_THAT(sentences, Contains(HasSubstr("for want of a piece price: window, picture frame")));
    EXPECT_THAT(sentences, Not(Contains(HasSubstr("Asked for"))));
}

TEST_F(Explain, TheMaterialOfAPieceOfWork) {
    m_shop.addPart(PartUse::newel, Money::dollars(100));
    m_shop.addPart(PartUse::passageSet, Money::dollars(25), true);
    m_shop.setTax(Percent::whole(8));
    m_takeoff.parts = {{PieceOfWork::windows, PartUse::newel, 2, sourceAt(4, "W4")},
        {PieceOfWork::windows, PartUse::passageSet, 1, sourceAt(4, "W4")},
        {PieceOfWork::doors, PartUse::newel, 1, sourceAt(7, "D7")}};
    m_takeoff.goods = {{PieceOfWork::windows, Money::dollars(50), sourceAt(4, "W4")}};
    const auto sticks = planAllSticks(stickNeeds(m_takeoff), m_shop.prices, Effort::quick);
    const Estimate result = estimate(m_takeoff, sticks, m_shop.prices, m_setup, 0);
    const WorkTotal windows = workOf(result, PieceOfWork::windows);
    EXPECT_EQ(windows.material, Money::cents(27810)); // 257.50 x 1.08
    EXPECT_THAT(explainMaterial(windows, m_takeoff, sticks, m_shop.prices, m_setup),
        ElementsAre("Flat casing: 8.0 ft of 16.0 ft, which cost $15.00, come to $7.50.",
            "passage set: 1, supplied by the builder.", "newel: 2 at $100.00 is $200.00.",
            "Bought for W4: $50.00.", "Tax on material at 8 % is in it.", "Together: $278.10."));
}

/// Days of work: 70 man-days by a crew of 12 are 5.83 days before any delay
/// [pub: NAVEDTRA 14045 ch. 2, its first step].
TEST(CrewDays, DivideByTheCrew) {
    EXPECT_EQ(crewDays(Hours::whole(70 * 8), 12), "5.8 days of 8 hours");
    EXPECT_EQ(crewDays(Hours::whole(16), 2), "1 day of 8 hours");
}

} // namespace
} // namespace miterbook
