// SPDX-License-Identifier: GPL-3.0-or-later
// A bid is kept as it was won: rates that change later change the next bid, not this one.
#include "job/figures.h"
#include "job/house_stage.h"
#include "job/start_house.h"
#include "job/week_check.h"
#include "job/workbook.h"
#include "support/memory_keeper.h"
#include "support/small_book.h"

#include <gtest/gtest.h>

namespace miterbook {
namespace {

constexpr Date today{std::chrono::year(2026), std::chrono::month(11), std::chrono::day(25)};

class HouseStageTest : public testing::Test {
protected:
    void SetUp() override {
        LabourRate rate;
        rate.id = Id<LabourRate>(200);
        rate.task = Task::pictureFrameWindow;
        rate.minutes = MinutesPerUnit::whole(30);
        m_book.prices.of<LabourRate>().put(rate);
        HouseStart start;
        start.plan = Id<Plan>(31);
        start.name = "Lot 12";
        apply(m_book, *startHouse(m_book, m_ids, start));
    }
    House house() const { return std::prev(m_book.jobs.of<House>().end())->second; }
    Estimate estimate() const {
        return figuresFor(m_book, house().work, {}, Effort::quick).estimate;
    }
    Edit toStage(HouseStage stage) {
        House moved = house();
        moved.stage = stage;
        const Estimate now = estimate();
        EditBuilder edit(m_book, "Stage");
        putHouseStage(edit, m_book, m_ids, moved, today, &now);
        return edit.take();
    }

    Book m_book = smallBook();
    IdSource m_ids{1000};
};

TEST_F(HouseStageTest, WinningKeepsTheBid) {
    const std::vector<WorkBid> bid = workBids(estimate());
    ASSERT_FALSE(bid.empty());
    apply(m_book, toStage(HouseStage::won));
    EXPECT_EQ(m_book.soldBid(house().work), bid);
    std::size_t tasks = 0;
    for (const auto& [id, sold] : m_book.sheet(house().work).of<SoldTask>()) {
        const EstimateLine line = estimate().lines.at(tasks++);
        EXPECT_EQ(sold.task, line.task);
        EXPECT_EQ(sold.quantity, line.quantity);
        EXPECT_EQ(sold.hours, line.hours);
    }
    EXPECT_EQ(tasks, estimate().lines.size());
}

TEST_F(HouseStageTest, ALaterRateChangesTheNextBidAndNotTheOneThatWasWon) {
    apply(m_book, toStage(HouseStage::won));
    const std::vector<WorkBid> won = m_book.soldBid(house().work);
    LabourRate rate = *m_book.prices.of<LabourRate>().find(Id<LabourRate>(200));
    rate.minutes = MinutesPerUnit::whole(45);
    apply(m_book, putEdit(m_book, "Accept", rate));
    apply(m_book, toStage(HouseStage::underway));
    EXPECT_EQ(m_book.soldBid(house().work), won);
    EXPECT_GT(estimate().total.hours, won.front().hours);
}

TEST_F(HouseStageTest, BiddingAgainLetsTheBidGo) {
    const Book before = m_book;
    apply(m_book, toStage(HouseStage::won));
    apply(m_book, toStage(HouseStage::bidding));
    EXPECT_EQ(m_book, before);
}

TEST_F(HouseStageTest, FinishingNotesTheDayOnce) {
    apply(m_book, toStage(HouseStage::finished));
    EXPECT_EQ(house().finished, today);
    EXPECT_TRUE(hasSoldBid(m_book, house().work));
    apply(m_book, toStage(HouseStage::paid));
    EXPECT_EQ(house().finished, today);
    apply(m_book, toStage(HouseStage::underway));
    EXPECT_EQ(house().finished, noDate);
}

TEST_F(HouseStageTest, RemovingTheHouseTakesItsBidAlong) {
    apply(m_book, toStage(HouseStage::won));
    apply(m_book, removeHouse(m_book, house().id));
    EXPECT_TRUE(m_book.jobs.of<SoldWork>().empty());
    EXPECT_EQ(m_book.sheets, smallBook().sheets);
}

TEST_F(HouseStageTest, AnApprovedWeekStaysAsItIs) {
    CrewMember omar;
    omar.id = Id<CrewMember>(300);
    omar.name = "Omar Quist";
    apply(m_book, putEdit(m_book, "Add", omar));
    TimeEntry entry;
    entry.id = Id<TimeEntry>(301);
    entry.date = today;
    entry.person = omar.id;
    entry.time = Hours::whole(8);
    apply(m_book, putEdit(m_book, "Add", entry));
    const WeekApproval approval{Id<WeekApproval>(302), addDays(today, -2), omar.id, today, "Lena"};
    apply(m_book, putEdit(m_book, "Approve", approval));

    MemoryKeeper keeper(m_book);
    auto workbook = Workbook::open(keeper);
    ASSERT_TRUE(workbook->openDays(today, today).ok());
    entry.time = Hours::whole(9);
    const auto refused = workbook->perform(putEdit(workbook->book(), "Revise", entry));
    ASSERT_FALSE(refused.ok());
    EXPECT_NE(refused.error().sentence.find("Omar Quist"), std::string::npos)
        << refused.error().sentence;
    EXPECT_NE(refused.error().sentence.find("approved"), std::string::npos);
    EXPECT_FALSE(
        workbook->perform(EditBuilder(workbook->book(), "Remove").remove(entry.id).take()).ok());
    const auto both
        = EditBuilder(workbook->book(), "Take back").remove(approval.id).put(entry).take();
    EXPECT_TRUE(workbook->perform(both).ok());
    EXPECT_EQ(workbook->book().time.total({}), Hours::whole(9));
}

} // namespace
} // namespace miterbook
