// SPDX-License-Identifier: GPL-3.0-or-later
// Bids that were sent: numbers, revisions, answers, and that nothing of them changes.
#include "job/sent_bids.h"

#include "basics/sha256.h"
#include "job/bills.h"
#include "job/house_stage.h"
#include "job/start_house.h"
#include "job/workbook.h"
#include "support/memory_keeper.h"
#include "support/small_book.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace miterbook {
namespace {

using testing::HasSubstr;

constexpr Id<Plan> aspenOfBids{31};
constexpr Id<Variant> blankWall{40};

Date day(unsigned number) {
    return std::chrono::year(2026) / 11 / std::chrono::day(number);
}

class SentBids : public testing::Test {
protected:
    SentBids()
        : m_keeper(bookWithHouse())
        , m_workbook(Workbook::open(m_keeper).value()) {}
    void SetUp() override {
        ASSERT_TRUE(m_workbook.openPlan(aspenOfBids));
        ASSERT_TRUE(m_workbook.openPlan(house().work));
    }

    static Book bookWithHouse() {
        Book book = smallBook();
        Plan birch = *book.plan(aspenOfBids);
        birch.id = Id<Plan>(32);
        birch.name = "Birch";
        book.jobs.of<Plan>().put(birch);
        book.sheets[birch.id];
        IdSource ids{1000};
        HouseStart start;
        start.plan = aspenOfBids;
        start.name = "Lot 12";
        apply(book, *startHouse(book, ids, start));
        return book;
    }

    const Book& book() const { return m_workbook.book(); }
    House house() const { return std::prev(book().jobs.of<House>().end())->second; }

    /// A bid as it would be sent, with a paper that says what it must.
    Edit sending(Id<Plan> job, Money amount, const Selection& selection = {}) {
        const BidNumber number = nextBidNumber(book(), job, selection);
        IssuedPaper paper;
        paper.id = m_workbook.ids().next<IssuedPaper>();
        paper.plan = job;
        paper.number = number.number;
        paper.revision = number.revision;
        paper.date = day(2);
        paper.amount = amount;
        paper.paper.text = "{}";
        paper.sum = sha256(paper.paper.text);
        SentBid bid;
        bid.id = m_workbook.ids().next<SentBid>();
        bid.job = job;
        bid.builder = Id<Builder>(10);
        bid.paper = paper.id;
        bid.number = number.number;
        bid.revision = number.revision;
        bid.date = paper.date;
        bid.elevation = selection.elevation;
        bid.options = selection.options;
        bid.amount = amount;
        bid.prices = {{PieceOfWork::windows, amount}};
        return EditBuilder(book(), "Send").put(paper).put(bid).take();
    }
    SentBid send(Id<Plan> job, Money amount, const Selection& selection = {}) {
        const auto done = m_workbook.perform(sending(job, amount, selection));
        EXPECT_TRUE(done.ok()) << done.error().sentence;
        return std::prev(book().jobs.of<SentBid>().end())->second;
    }
    std::string refusal(const Edit& edit) {
        const auto done = m_workbook.perform(edit);
        return done ? std::string("done") : done.error().sentence;
    }
    std::string answer(SentBid bid, BidAnswer how, Date on = day(9)) {
        bid.answer = how;
        bid.answered = on;
        const auto edit = answerBid(book(), m_workbook.ids(), bid, m_estimate);
        return edit ? refusal(*edit) : edit.error().sentence;
    }
    SentBid held(const SentBid& bid) const { return *book().jobs.of<SentBid>().find(bid.id); }
    BidStanding standing(const SentBid& bid) const { return standingOf(book(), held(bid)); }

    MemoryKeeper m_keeper;
    Workbook m_workbook;
    Estimate m_estimate;
};

TEST_F(SentBids, ARevisionKeepsTheNumberAndSupersedes) {
    const SentBid first = send(aspenOfBids, Money::dollars(9000));
    EXPECT_EQ(first.number, 1);
    EXPECT_EQ(bidName(first), "1");
    const SentBid second = send(aspenOfBids, Money::dollars(9200));
    EXPECT_EQ(second.number, 1);
    EXPECT_EQ(bidName(second), "1, revision 2");
    EXPECT_EQ(standing(first), BidStanding::superseded);
    EXPECT_EQ(standing(second), BidStanding::open);
    EXPECT_EQ(sentBidsOf(book(), aspenOfBids).front().revision, 2); // the latest first
}

TEST_F(SentBids, AnotherPlanOrOtherOptionsAreAnotherNumber) {
    const SentBid bare = send(aspenOfBids, Money::dollars(9000));
    const Selection walled{{}, {blankWall}};
    const SentBid withOption = send(aspenOfBids, Money::dollars(8700), walled);
    EXPECT_EQ(withOption.number, 2);
    EXPECT_EQ(send(Id<Plan>(32), Money::dollars(5000)).number, 3);
    EXPECT_EQ(standing(bare), BidStanding::open);
    EXPECT_EQ(nextBidNumber(book(), aspenOfBids, walled), (BidNumber{2, 2}));
    EXPECT_EQ(nextBidNumber(book(), house().work, {}), (BidNumber{4, 1}));
}

TEST_F(SentBids, OptionsInAnotherOrderAreTheSame) {
    Variant second = *book().sheet(aspenOfBids).of<Variant>().find(blankWall);
    second.id = Id<Variant>(400);
    second.name = "Crown";
    ASSERT_TRUE(m_workbook.perform(putEdit(book(), "Add", second)));
    send(aspenOfBids, Money::dollars(9000), {{}, {blankWall, second.id}});
    EXPECT_EQ(nextBidNumber(book(), aspenOfBids, {{}, {second.id, blankWall}}), (BidNumber{1, 2}));
}

TEST_F(SentBids, WhatWasSentStays) {
    const SentBid bid = send(aspenOfBids, Money::dollars(9000));
    SentBid changed = bid;
    changed.amount = Money::dollars(8000);
    changed.prices.front().price = changed.amount;
    EXPECT_EQ(refusal(putEdit(book(), "Change", changed)),
        "Bid 1 has been sent and stays as it is: send a revision.");
    EXPECT_THAT(
        refusal(EditBuilder(book(), "Remove").remove(bid.id).take()), HasSubstr("stays as it is"));
    EXPECT_EQ(held(bid), bid);
    EXPECT_THAT(refusal(removePlan(book(), aspenOfBids)), HasSubstr("given out of hand"));
    EXPECT_TRUE(book().plan(aspenOfBids));
}

TEST_F(SentBids, UndoOfSendingIsRefused) {
    const Edit edit = sending(aspenOfBids, Money::dollars(9000));
    ASSERT_EQ(refusal(edit), "done");
    EXPECT_THAT(refusal(inverse(edit)), HasSubstr("stays as it is"));
}

TEST_F(SentBids, NumbersHaveNoGapsAndComeWithTheirPaper) {
    Edit edit = sending(aspenOfBids, Money::dollars(9000));
    const SentBid sent = *edit.changes.back().after->as<SentBid>();
    SentBid gap = sent;
    gap.number = 5;
    EXPECT_EQ(refusal(EditBuilder(book(), "Send").put(gap).take()),
        "The next bid on this is number 1, not 5.");
    gap.number = 1;
    EXPECT_EQ(refusal(EditBuilder(book(), "Send").put(gap).take()),
        "A bid is sent together with its paper.");
    SentBid spoilt = sent;
    spoilt.date = day(3); // not the paper's
    edit.changes.back().after = spoilt;
    EXPECT_EQ(refusal(edit), "A bid is sent together with its paper.");
    spoilt = sent;
    spoilt.prices.front().price = Money::dollars(1);
    edit.changes.back().after = spoilt;
    EXPECT_THAT(refusal(edit), HasSubstr("do not add up"));
}

TEST_F(SentBids, AnAnswerNeedsADayAndCanBeTakenBack) {
    const SentBid bid = send(aspenOfBids, Money::dollars(9000));
    EXPECT_THAT(answer(bid, BidAnswer::lost, noDate), HasSubstr("on which day"));
    EXPECT_EQ(answer(bid, BidAnswer::lost), "done");
    EXPECT_EQ(standing(bid), BidStanding::lost);
    EXPECT_EQ(answer(held(bid), BidAnswer::open), "done");
    EXPECT_EQ(held(bid), bid);
}

TEST_F(SentBids, ASupersededBidIsNotAnswered) {
    const SentBid first = send(aspenOfBids, Money::dollars(9000));
    send(aspenOfBids, Money::dollars(9200));
    EXPECT_EQ(answer(first, BidAnswer::accepted),
        "Bid 1 is superseded: the answer belongs to its last revision.");
}

TEST_F(SentBids, AnAcceptedHouseIsWonAtThePriceThatWasSent) {
    const SentBid bid = send(house().work, Money::dollars(9000));
    WorkTotal windows;
    windows.work = PieceOfWork::windows;
    windows.labour = Money::dollars(6000);
    windows.hours = Hours::minutes(6000);
    windows.profit = Money::dollars(4000);
    windows.price = Money::dollars(10'000); // rates have moved since
    m_estimate.works = {windows};
    m_estimate.total = windows;
    ASSERT_EQ(answer(bid, BidAnswer::accepted), "done");
    EXPECT_EQ(house().stage, HouseStage::won);
    const auto sold = book().soldBid(house().work);
    ASSERT_EQ(sold.size(), 1U);
    EXPECT_EQ(sold.front().price, Money::dollars(9000));
    EXPECT_EQ(sold.front().cost, Money::dollars(6000));
    EXPECT_EQ(sold.front().hours, Hours::minutes(6000));
}

TEST_F(SentBids, AsSentKeepsCostAndAddsWorksThatAreGone) {
    WorkTotal doors;
    doors.work = PieceOfWork::doors;
    doors.labour = Money::dollars(100);
    doors.price = Money::dollars(120);
    doors.profit = Money::dollars(20);
    Estimate estimate;
    estimate.works = {doors};
    estimate.total = doors;
    SentBid bid;
    bid.amount = Money::dollars(200);
    bid.prices = {
        {PieceOfWork::doors, Money::dollars(150)}, {PieceOfWork::base, Money::dollars(50)}};
    const Estimate sent = asSent(estimate, bid);
    Money price;
    Money profit;
    for (const WorkTotal& work : sent.works) {
        EXPECT_EQ(work.cost() + work.profit, work.price);
        price += work.price;
        profit += work.profit;
    }
    EXPECT_EQ(sent.works.size(), 2U);
    EXPECT_EQ(price, Money::dollars(200));
    EXPECT_EQ(sent.total.price, price);
    EXPECT_EQ(sent.total.profit, profit);
    EXPECT_EQ(sent.margin, Percent::whole(50));
}

TEST_F(SentBids, WinRateCountsEachNumberOnce) {
    send(aspenOfBids, Money::dollars(9000));
    const SentBid won = send(aspenOfBids, Money::dollars(9200));
    const SentBid lost = send(Id<Plan>(32), Money::dollars(4000));
    send(house().work, Money::dollars(700));
    ASSERT_EQ(answer(won, BidAnswer::accepted), "done");
    ASSERT_EQ(answer(lost, BidAnswer::lost), "done");
    const auto all = bidsByBuilder(book());
    ASSERT_EQ(all.size(), 1U);
    const BuilderBids wanted{
        Id<Builder>(10), 1, 1, 1, Money::dollars(9200), Money::dollars(4000), Money::dollars(700)};
    EXPECT_EQ(all.front(), wanted);
    EXPECT_EQ(all.front().winRate(), Percent::whole(50));
    EXPECT_FALSE(BuilderBids().winRate());
}

TEST_F(SentBids, AStartedHouseDoesNotInheritTheBids) {
    send(aspenOfBids, Money::dollars(9000));
    HouseStart start;
    start.plan = aspenOfBids;
    start.name = "Lot 13";
    const auto edit = startHouse(book(), m_workbook.ids(), start);
    ASSERT_TRUE(edit.ok());
    ASSERT_TRUE(m_workbook.perform(*edit));
    EXPECT_EQ(book().jobs.of<SentBid>().size(), 1U);
}

TEST_F(SentBids, SettingsAreCopiedToAnotherPlan) {
    BidSetup setup = setupFrom(book().prices.terms(), aspenOfBids);
    setup.id = m_workbook.ids().next<BidSetup>();
    setup.profit = Percent::whole(31);
    setup.scope = "Trim as drawn.";
    setup.allowances = {{"Hardware", PieceOfWork::hardware, Money::dollars(900)}};
    ASSERT_TRUE(m_workbook.perform(putEdit(book(), "Set", setup)));
    const auto edit = copyBidSettings(book(), m_workbook.ids(), aspenOfBids, Id<Plan>(32));
    ASSERT_TRUE(edit.ok());
    EXPECT_EQ(edit->sentence, "Copy the bid settings of Aspen to Birch");
    ASSERT_TRUE(m_workbook.perform(*edit));
    BidSetup copied = *book().bidSetup(Id<Plan>(32));
    EXPECT_NE(copied.id, setup.id);
    copied.id = setup.id;
    copied.plan = aspenOfBids;
    EXPECT_EQ(copied, setup);
    const auto again = copyBidSettings(book(), m_workbook.ids(), aspenOfBids, Id<Plan>(32));
    ASSERT_FALSE(again.ok());
    EXPECT_EQ(again.error().sentence, "Birch has these settings already.");
    EXPECT_FALSE(copyBidSettings(book(), m_workbook.ids(), aspenOfBids, aspenOfBids).ok());
}

} // namespace
} // namespace miterbook
