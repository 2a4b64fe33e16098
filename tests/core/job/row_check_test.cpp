// SPDX-License-Identifier: GPL-3.0-or-later
#include "job/row_check.h"
#include "job/whole_edit.h"
#include "job/workbook.h"
#include "support/memory_keeper.h"
#include "support/small_book.h"

#include <gtest/gtest.h>

namespace miterbook {
namespace {

class RowCheck : public testing::Test {
protected:
    template <class Row>
    void expectRefused(const Row& row, const std::string& part) {
        const auto checked = checkRows(m_book, putEdit(m_book, "Change", row));
        ASSERT_FALSE(checked.ok()) << part;
        EXPECT_NE(checked.error().sentence.find(part), std::string::npos)
            << checked.error().sentence;
    }
    template <class Row>
    void expectFine(const Row& row) {
        const auto checked = checkRows(m_book, putEdit(m_book, "Change", row));
        EXPECT_TRUE(checked.ok()) << checked.error().sentence;
    }
    Opening opening(std::int64_t id) const {
        return *m_book.sheet(Id<Plan>(31)).of<Opening>().find(Id<Opening>(id));
    }
    Book m_book = smallBook();
};

TEST_F(RowCheck, WhatIsInTheBookPasses) {
    for (const Change& change : wholeEdit(m_book, "all").changes) {
        const auto checked = checkRows(m_book, {"Again", {{change.after, change.after}}});
        EXPECT_TRUE(checked.ok()) << checked.error().sentence;
    }
}

TEST_F(RowCheck, LengthsOfAnOpening) {
    Opening wide = opening(43);
    wide.width = Length::feet(400);
    expectRefused(wide, "W1 has a width of 400'");
    wide.width = -Length::inches(1);
    expectRefused(wide, "negative");
    wide.width = {}; // not typed yet
    expectFine(wide);
}

TEST_F(RowCheck, AMarkTwiceInAPlan) {
    Opening twice = opening(44);
    twice.mark = "W1";
    expectRefused(twice, "marked W1 already");
}

TEST_F(RowCheck, TwoMarksChangePlacesInOneEdit) {
    Opening first = opening(43);
    Opening second = opening(44);
    std::swap(first.mark, second.mark);
    const Edit swap = EditBuilder(m_book, "Swap marks").put(first).put(second).take();
    const auto checked = checkRows(m_book, swap);
    EXPECT_TRUE(checked.ok()) << checked.error().sentence;
}

TEST_F(RowCheck, PricesAreLookedAtWithTheBook) {
    Stick again;
    again.id = Id<Stick>(60);
    again.profile = Id<Profile>(20);
    again.length = Length::feet(14);
    expectRefused(again, "already");
    again.length = Length::feet(16);
    expectFine(again);
}

TEST_F(RowCheck, Names) {
    Plan plan = *m_book.plan(Id<Plan>(31));
    plan.name = " ";
    expectRefused(plan, "The plan needs a name.");
    plan.name = "Birch";
    plan.floorArea = -5;
    expectRefused(plan, "below zero");
}

TEST_F(RowCheck, BidSetups) {
    BidSetup setup;
    setup.id = Id<BidSetup>(50);
    setup.plan = Id<Plan>(31);
    expectFine(setup);
    setup.waste = Percent::whole(101);
    expectRefused(setup, "Waste");
    setup.waste = {};
    setup.profitKind = ProfitKind::marginOnPrice;
    setup.profit = Percent::hundred();
    expectRefused(setup, "margin");
}

TEST_F(RowCheck, RulesAndAllowancesOfABid) {
    BidSetup setup;
    setup.id = Id<BidSetup>(50);
    setup.plan = Id<Plan>(31);
    setup.minimum = Money::dollars(-1);
    expectRefused(setup, "A minimum job of -1.00");
    setup.minimum = Money::dollars(500);
    setup.allowances = {{"Door hardware", PieceOfWork::hardware, Money::dollars(900)}};
    expectFine(setup);
    setup.allowances.front().amount = Money::dollars(-900);
    expectRefused(setup, "Door hardware: an allowance of -900.00");
    setup.allowances.front() = {" ", PieceOfWork::hardware, Money::dollars(900)};
    expectRefused(setup, "what the allowance is for");
}

TEST_F(RowCheck, Scenarios) {
    Scenario scenario;
    scenario.id = Id<Scenario>(50);
    scenario.plan = Id<Plan>(31);
    expectRefused(scenario, "A scenario needs a name.");
    scenario.name = "Wages up";
    expectFine(scenario);
    scenario.wages = Percent::whole(5);
    expectRefused(scenario, "Wages of 5 %");
    scenario.wages = Percent::whole(110);
    scenario.minutes = Percent::whole(2000);
    expectRefused(scenario, "Minutes of 2000 %");
    scenario.minutes = Percent::hundred();
    scenario.profitKind = ProfitKind::marginOnPrice;
    scenario.profit = Percent::hundred();
    expectRefused(scenario, "margin");
}

TEST_F(RowCheck, TextThatCannotBeKept) {
    Builder builder = *m_book.prices.of<Builder>().find(Id<Builder>(10));
    builder.note = std::string("bad\xFF", 4);
    expectRefused(builder, "The builder was refused: note: its text holds characters");
    builder.note = std::string("nul\0nul", 7);
    expectRefused(builder, "characters");
    builder.note = std::string(20'001, 'x');
    expectRefused(builder, "too long");
    builder.note = "Außen ½″ 🪚\nsecond line";
    expectFine(builder);
}

TEST_F(RowCheck, WordsAndDaysThatThereAreNot) {
    Opening odd = opening(43);
    odd.style = static_cast<TrimStyle>(99);
    expectRefused(odd, "style: there is no such value");
    House house;
    house.id = Id<House>(51);
    house.plan = Id<Plan>(31);
    house.name = "Lot 1";
    house.started = Date(std::chrono::year(2026) / 2 / 30);
    expectRefused(house, "started: it is no day");
}

TEST_F(RowCheck, Ids) {
    Builder builder;
    builder.name = "Marlow";
    expectRefused(builder, "no proper id");
    Shop second;
    second.id = Id<Shop>(2);
    expectRefused(second, "no proper id");
}

TEST_F(RowCheck, ARowStaysTheRowItIs) {
    const Opening before = opening(43);
    Opening after = before;
    after.plan = Id<Plan>(77);
    EXPECT_FALSE(checkRows(m_book, {"Move", {{AnyRow(before), AnyRow(after)}}}).ok());
    after = before;
    after.id = Id<Opening>(78);
    EXPECT_FALSE(checkRows(m_book, {"Move", {{AnyRow(before), AnyRow(after)}}}).ok());
}

TEST_F(RowCheck, AnOptionThatAHouseHas) {
    House house;
    house.id = Id<House>(51);
    house.name = "Lot 1";
    house.options = {Id<Variant>(40)};
    m_book.jobs.of<House>().put(house);
    const Edit removal = EditBuilder(m_book, "Remove").remove(Id<Variant>(40)).take();
    const auto checked = checkRows(m_book, removal);
    ASSERT_FALSE(checked.ok());
    EXPECT_EQ(checked.error().sentence,
        "The elevation or option \"Blank wall\" is still used by the house \"Lot 1\".");
    Edit both = EditBuilder(m_book, "Remove").remove(Id<Variant>(40)).remove(house.id).take();
    EXPECT_TRUE(checkRows(m_book, both).ok());
}

TEST_F(RowCheck, TheWorkbookAsksBeforeItWrites) {
    MemoryKeeper keeper(m_book);
    auto workbook = Workbook::open(keeper);
    ASSERT_TRUE(workbook->openPlan(Id<Plan>(31)).ok());
    Opening wide = opening(43);
    wide.width = Length::feet(400);
    EXPECT_FALSE(workbook->perform(putEdit(workbook->book(), "Widen", wide)).ok());
    EXPECT_EQ(keeper.writes(), 0);
    EXPECT_EQ(workbook->book().sheet(Id<Plan>(31)), m_book.sheet(Id<Plan>(31)));
}

TEST_F(RowCheck, IdsThatCameFromElsewhereAreNotGivenAgain) {
    MemoryKeeper keeper(m_book);
    auto workbook = Workbook::open(keeper);
    Builder builder;
    builder.id = Id<Builder>(900);
    builder.name = "Marlow";
    ASSERT_TRUE(workbook->perform(putEdit(workbook->book(), "Add", builder)).ok());
    EXPECT_EQ(workbook->ids().next<Plan>().value(), 901);
}

} // namespace
} // namespace miterbook
