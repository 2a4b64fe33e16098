// SPDX-License-Identifier: GPL-3.0-or-later
// A price sheet against the one before: what moved, and what changed in the book in between.
#include "job/sheet_moves.h"

#include "support/small_book.h"

#include <gmock/gmock.h>

namespace miterbook {
namespace {

using testing::ElementsAre;

constexpr Id<Variant> elevationOfMoves{501};
constexpr Id<Variant> crownOfMoves{511};

PlanPrices aspenPrices(int plain, int farm, int crownPlain, int crownFarm) {
    PlanPrices prices;
    prices.plan = Id<Plan>(31);
    prices.name = "Aspen";
    prices.columns = {
        {{}, "As drawn", Money::dollars(plain)}, {elevationOfMoves, "B", Money::dollars(farm)}};
    prices.options = {
        {crownOfMoves, "Crown pack", {Money::dollars(crownPlain), Money::dollars(crownFarm)}}};
    return prices;
}

TEST(SheetMoves, EveryPriceWithWhatItWas) {
    const auto moves = sheetMoves(
        {aspenPrices(9000, 9600, 1400, 1450)}, {aspenPrices(9000, 9650, 1400, 1440)});
    ASSERT_EQ(moves.size(), 4U);
    EXPECT_FALSE(moves[0].moved());
    EXPECT_EQ(moves[1].elevation, "B");
    EXPECT_EQ(moves[1].change(), Money::dollars(50));
    EXPECT_EQ(moves[3].line, "Crown pack");
    EXPECT_EQ(moves[3].change(), Money::dollars(-10));
}

TEST(SheetMoves, PlansAndOptionsThatCameOrWent) {
    PlanPrices without = aspenPrices(9000, 9600, 0, 0);
    without.options.clear();
    const auto came = sheetMoves({without}, {aspenPrices(9000, 9600, 1400, 1450)});
    ASSERT_EQ(came.size(), 4U);
    EXPECT_FALSE(came[2].before);
    EXPECT_EQ(came[2].change(), Money::dollars(1400));
    const auto went = sheetMoves({aspenPrices(9000, 9600, 1400, 1450)}, {without});
    ASSERT_EQ(went.size(), 4U);
    EXPECT_FALSE(went[3].after);
    EXPECT_TRUE(went[3].moved());
    EXPECT_EQ(sheetMoves({}, {without}).size(), 2U);
    EXPECT_TRUE(sheetMoves({}, {}).empty());
}

class Reasons : public testing::Test {
protected:
    template <class Row>
    std::vector<std::string> of(Row row) {
        std::vector<std::string> said;
        gatherReasons(m_book, Id<PlanSet>(30), putEdit(m_book, "Change", row).changes, said);
        return said;
    }

    Book m_book = smallBook();
};

TEST_F(Reasons, PricesAreNamed) {
    LabourRate rate;
    rate.id = Id<LabourRate>(200);
    rate.task = Task::base;
    EXPECT_THAT(of(rate), ElementsAre("labour rate \"base, one piece\""));
    Stick stick = *m_book.prices.of<Stick>().find(Id<Stick>(21));
    stick.price = Money::dollars(20);
    EXPECT_THAT(of(stick), ElementsAre("stick of Flat casing, 168\""));
    StickPrice price;
    price.id = Id<StickPrice>(201);
    price.stick = stick.id;
    EXPECT_THAT(of(price), ElementsAre("stick of Flat casing, 168\""));
    Terms terms;
    terms.id = Id<Terms>(1);
    EXPECT_THAT(of(terms), ElementsAre("terms"));
}

TEST_F(Reasons, OnlyPlansOfTheSetCount) {
    Opening wider = *m_book.sheet(Id<Plan>(31)).of<Opening>().find(Id<Opening>(43));
    wider.width = Length::inches(40);
    EXPECT_THAT(of(wider), ElementsAre("plan \"Aspen\""));
    std::vector<std::string> none;
    gatherReasons(m_book, Id<PlanSet>(99), putEdit(m_book, "Change", wider).changes, none);
    EXPECT_TRUE(none.empty());
    Builder builder = *m_book.prices.of<Builder>().find(Id<Builder>(10));
    builder.phone = "555";
    EXPECT_TRUE(of(builder).empty()); // moves no price
}

TEST_F(Reasons, EachIsSaidOnce) {
    std::vector<std::string> said;
    for (const int cents : {2000, 2100}) {
        Stick stick = *m_book.prices.of<Stick>().find(Id<Stick>(21));
        stick.price = Money::cents(cents);
        gatherReasons(m_book, Id<PlanSet>(30), putEdit(m_book, "Change", stick).changes, said);
    }
    EXPECT_EQ(said.size(), 1U);
}

} // namespace
} // namespace miterbook
