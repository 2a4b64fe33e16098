// SPDX-License-Identifier: GPL-3.0-or-later
#include "job/start_house.h"
#include "support/small_book.h"

#include <gtest/gtest.h>

namespace miterbook {
namespace {

class StartHouse : public testing::Test {
protected:
    HouseStart start() const {
        return {Id<Plan>(31), {}, "  Lot 7 ", "7", "12 Alder Lane",
            Date(std::chrono::year(2026) / 11 / 25)};
    }
    Result<Edit> begin(const HouseStart& wanted) { return startHouse(m_book, m_ids, wanted); }
    void expectRefused(const HouseStart& wanted, const std::string& sentence) {
        const auto edit = begin(wanted);
        ASSERT_FALSE(edit.ok());
        EXPECT_EQ(edit.error().sentence, sentence);
    }
    const House& onlyHouse() const { return m_book.jobs.of<House>().begin()->second; }
    Book m_book = smallBook();
    IdSource m_ids{100};
};

TEST_F(StartHouse, CopiesThePlan) {
    const auto edit = begin(start());
    ASSERT_TRUE(edit.ok()) << edit.error().sentence;
    EXPECT_EQ(edit->sentence, "Start house Lot 7");
    apply(m_book, *edit);
    const House& house = onlyHouse();
    EXPECT_EQ(house.name, "Lot 7");
    EXPECT_EQ(house.address, "12 Alder Lane");
    EXPECT_EQ(house.stage, HouseStage::bidding);
    const Plan* work = m_book.plan(house.work);
    ASSERT_TRUE(work);
    EXPECT_EQ(work->house, house.id);
    EXPECT_EQ(work->windowCasing, Id<Profile>(20));
    EXPECT_TRUE(m_book.isOpen(house.work));
    const PlanRows& rows = m_book.sheet(house.work);
    EXPECT_EQ(rows.of<Opening>().size(), 2U);
    EXPECT_TRUE(rows.of<Variant>().empty());
}

TEST_F(StartHouse, ReferencesGoToTheCopiedRows) {
    apply(m_book, *begin(start()));
    const PlanRows& rows = m_book.sheet(onlyHouse().work);
    for (const auto& [id, opening] : rows.of<Opening>()) {
        EXPECT_TRUE(rows.of<Room>().contains(opening.room));
        EXPECT_TRUE(rows.of<Level>().contains(opening.level));
        EXPECT_GT(opening.room.value(), 100);
    }
}

TEST_F(StartHouse, AnOptionIsBuiltIn) {
    HouseStart wanted = start();
    wanted.selection.options = {Id<Variant>(40)}; // takes W2 away
    apply(m_book, *begin(wanted));
    const auto& openings = m_book.sheet(onlyHouse().work).of<Opening>();
    ASSERT_EQ(openings.size(), 1U);
    EXPECT_EQ(openings.begin()->second.mark, "W1");
    EXPECT_EQ(onlyHouse().options, wanted.selection.options);
}

TEST_F(StartHouse, TheBidSetupComesAlong) {
    BidSetup setup;
    setup.id = Id<BidSetup>(50);
    setup.plan = Id<Plan>(31);
    setup.profit = Percent::whole(25);
    m_book.jobs.of<BidSetup>().put(setup);
    apply(m_book, *begin(start()));
    const BidSetup* own = m_book.bidSetup(onlyHouse().work);
    ASSERT_TRUE(own);
    EXPECT_NE(own->id, setup.id);
    EXPECT_EQ(own->profit, Percent::whole(25));
}

TEST_F(StartHouse, NeedsANameOfItsOwn) {
    HouseStart wanted = start();
    wanted.name = " \t";
    expectRefused(wanted, "A house needs a name, such as its lot.");
    apply(m_book, *begin(start()));
    expectRefused(start(), "There is a house called \"Lot 7\" already.");
}

TEST_F(StartHouse, NeedsAnOpenBuildersPlan) {
    HouseStart wanted = start();
    wanted.plan = Id<Plan>(99);
    expectRefused(wanted, "That plan is not in the book any more.");
    apply(m_book, *begin(start()));
    wanted = start();
    wanted.name = "Lot 8";
    wanted.plan = onlyHouse().work;
    expectRefused(wanted, "A house is started from a builder's plan, not from another house.");
    m_book.sheets.clear();
    wanted.plan = Id<Plan>(31);
    expectRefused(wanted, "The plan \"Aspen\" has to be opened first.");
}

TEST_F(StartHouse, NeedsElevationsAndOptionsOfThePlan) {
    HouseStart wanted = start();
    wanted.selection.elevation = Id<Variant>(40); // an option
    expectRefused(wanted, "The plan has no such elevation.");
    wanted.selection = {{}, {Id<Variant>(41)}};
    expectRefused(wanted, "The plan has no such option.");
}

TEST_F(StartHouse, RemovingTakesEverythingOfItAway) {
    const Book before = m_book;
    apply(m_book, *begin(start()));
    const Edit removal = removeHouse(m_book, onlyHouse().id);
    EXPECT_EQ(removal.sentence, "Remove house Lot 7");
    apply(m_book, removal);
    EXPECT_EQ(m_book, before);
    EXPECT_TRUE(removeHouse(m_book, Id<House>(99)).empty());
}

TEST_F(StartHouse, RemovingAPlanTakesItsRowsAndSetup) {
    BidSetup setup;
    setup.id = Id<BidSetup>(50);
    setup.plan = Id<Plan>(31);
    m_book.jobs.of<BidSetup>().put(setup);
    apply(m_book, removePlan(m_book, Id<Plan>(31)));
    EXPECT_TRUE(m_book.sheets.empty());
    EXPECT_TRUE(m_book.jobs.of<Plan>().empty());
    EXPECT_TRUE(m_book.jobs.of<BidSetup>().empty());
}

} // namespace
} // namespace miterbook
