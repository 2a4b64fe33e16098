// SPDX-License-Identifier: GPL-3.0-or-later
// What a house came to, with what was agreed besides its bid.
#include "job/house_review.h"

#include "job/bill_edits.h"
#include "job/workbook.h"
#include "support/billed_house.h"
#include "support/memory_keeper.h"

#include <gtest/gtest.h>

namespace miterbook {
namespace {

class ReviewedHouse : public testing::Test {
protected:
    void SetUp() override {
        m_book = billedHouse();
        Extra seat = *m_book.jobs.of<Extra>().find(windowSeat);
        seat.material = Money::dollars(150);
        m_book.jobs.of<Extra>().put(seat);
        SoldWork doors;
        doors.id = Id<SoldWork>(900);
        doors.plan = lot7Plan;
        doors.work = PieceOfWork::doors;
        doors.hours = Hours::whole(40);
        doors.labour = Money::dollars(2000);
        doors.cost = Money::dollars(3000);
        doors.price = Money::dollars(4000);
        m_book.jobs.of<SoldWork>().put(doors);
    }
    HouseResult result() const { return resultOf(m_book, *m_book.house(lot7)); }

    Book m_book;
};

TEST_F(ReviewedHouse, TheMaterialOfExtrasIsACost) {
    const HouseResult house = result();
    const WorkResult* extras = house.of(PieceOfWork::extras);
    ASSERT_NE(extras, nullptr);
    EXPECT_EQ(extras->price, Money::dollars(480));
    EXPECT_EQ(extras->cost, Money::dollars(150));
    // [calc] doors 4,000 and extras 480; material and overhead of doors 1,000, of extras 150, no
    // hours yet, 85 of backcharge.
    EXPECT_EQ(house.price, Money::dollars(4480));
    EXPECT_EQ(house.cost, Money::dollars(1000 + 150 + 85));
    EXPECT_EQ(house.bidProfit, Money::dollars(1000)) << "nobody bid the extra";
    EXPECT_EQ(extras->bidProfit(), Money());
    Money bidProfit;
    for (const WorkResult& work : house.works)
        bidProfit += work.bidProfit();
    EXPECT_EQ(house.bidProfit, bidProfit) << "the rows add up to the total";
}

TEST_F(ReviewedHouse, WhatNobodyAgreedToCostsNothing) {
    for (const ExtraState state : {ExtraState::asked, ExtraState::priced, ExtraState::dropped}) {
        Extra seat = *m_book.jobs.of<Extra>().find(windowSeat);
        seat.state = state;
        m_book.jobs.of<Extra>().put(seat);
        EXPECT_EQ(result().of(PieceOfWork::extras), nullptr) << word(state);
    }
}

TEST_F(ReviewedHouse, AnExtraBeginsWithTheMaterialOfItsLines) {
    IdSource ids(2000);
    Extra rail;
    rail.house = lot7;
    rail.title = "Chair rail";
    rail.price = Money::dollars(300);
    ExtraLine first;
    first.quantity = Quantity::count(2);
    first.material = Money::dollars(40);
    ExtraLine second = first;
    second.material = Money::cents(1250);
    const auto edit = addExtra(m_book, ids, rail, {first, second});
    ASSERT_TRUE(edit.ok()) << edit.error().sentence;
    apply(m_book, *edit);
    const Extra& added = std::prev(m_book.jobs.of<Extra>().end())->second;
    EXPECT_EQ(added.material, Money::cents(5250));
    EXPECT_EQ(added.price, Money::dollars(300)) << "a price typed in stands";
}

TEST_F(ReviewedHouse, AnImpossibleMaterialIsRefused) {
    Extra seat = *m_book.jobs.of<Extra>().find(windowSeat);
    seat.material = Money::dollars(200'000'000);
    MemoryKeeper keeper(m_book);
    auto workbook = Workbook::open(keeper);
    ASSERT_TRUE(workbook.ok());
    ASSERT_TRUE(workbook->openPlan(lot7Plan).ok());
    const auto put = workbook->perform(putEdit(workbook->book(), "Put", seat));
    ASSERT_FALSE(put.ok());
    EXPECT_EQ(put.error().sentence, "The material of an extra is up to 100 million.");
}

} // namespace
} // namespace miterbook
