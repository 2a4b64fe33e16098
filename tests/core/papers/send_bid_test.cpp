// SPDX-License-Identifier: GPL-3.0-or-later
// A bid that was sent opens with the text and the hash that it was sent with.
#include "papers/send_bid.h"

#include "basics/sha256.h"
#include "job/workbook.h"
#include "papers/cells.h"
#include "papers/freeze.h"
#include "papers/frozen_form.h"
#include "papers/sample_job.h"
#include "papers/write_paper.h"
#include "support/memory_keeper.h"

#include <gmock/gmock.h>

namespace miterbook {
namespace {

using testing::HasSubstr;
using testing::Not;

class SendBid : public testing::Test {
protected:
    SendBid()
        : m_keeper(m_job.book)
        , m_workbook(Workbook::open(m_keeper).value()) {}
    void SetUp() override { ASSERT_TRUE(m_workbook.openPlan(m_job.plan)); }

    const Book& book() const { return m_workbook.book(); }
    PaperJob on(unsigned day) const {
        return {book(), m_job.plan, {}, {}, std::chrono::year(2026) / 11 / std::chrono::day(day),
            {m_job.elevation, {m_job.option}}};
    }
    SentBid send(unsigned day) {
        const auto edit = sendBid(on(day), m_job.figures, m_workbook.ids());
        EXPECT_TRUE(edit.ok()) << edit.error().sentence;
        const auto done = m_workbook.perform(*edit);
        EXPECT_TRUE(done.ok()) << done.error().sentence;
        return sentBidsOf(book(), m_job.plan).front();
    }
    const IssuedPaper& issued(const SentBid& bid) const {
        return *book().sheet(bid.job).of<IssuedPaper>().find(bid.paper);
    }

    SampleJob m_job;
    MemoryKeeper m_keeper;
    Workbook m_workbook;
};

TEST_F(SendBid, CarriesNumberRevisionAndTheSamePrice) {
    const SentBid first = send(2);
    const Paper paper = *sentBidPaper(book(), first);
    EXPECT_EQ(paper.title, "Bid 1");
    EXPECT_EQ(paper.totals.front().second, moneyCell(first.amount, "$"));
    EXPECT_EQ(first.amount, m_job.figures.estimate.total.price);
    EXPECT_EQ(first.validUntil, addDays(first.date, book().prices.terms().validDays));
    const SentBid second = send(9);
    const std::string text = paperText(*sentBidPaper(book(), second));
    EXPECT_THAT(text, HasSubstr("Bid 1, revision 2"));
    EXPECT_THAT(text, HasSubstr("2, in place of that of 11/2/2026"));
    EXPECT_THAT(paperText(*sentBidPaper(book(), first)), Not(HasSubstr("revision")));
}

TEST_F(SendBid, SaysTheSameWhateverBecomesOfTheBook) {
    const SentBid bid = send(2);
    const std::string text = paperText(*sentBidPaper(book(), bid));
    const std::string json = paperJson(*sentBidPaper(book(), bid));
    const std::string sum = issued(bid).sum;
    Shop shop = book().prices.shop();
    shop.name = "Another name";
    shop.currency = "CHF";
    Terms terms = book().prices.terms();
    terms.paymentTerms = "All of it at once.";
    EditBuilder edit(book(), "Change");
    edit.put(shop).put(terms);
    for (Builder builder : {m_job.builder()}) {
        builder.name = "Somebody else";
        edit.put(builder);
    }
    ASSERT_TRUE(m_workbook.perform(edit.take()));
    send(20);
    EXPECT_EQ(paperText(*sentBidPaper(book(), bid)), text);
    EXPECT_EQ(paperJson(*sentBidPaper(book(), bid)), json);
    EXPECT_EQ(issued(bid).sum, sum);
    EXPECT_EQ(sha256(issued(bid).paper.text), sum);
}

TEST_F(SendBid, OfNothingIsRefused) {
    JobFigures nothing;
    const auto edit = sendBid(on(2), nothing, m_workbook.ids());
    ASSERT_FALSE(edit.ok());
    EXPECT_EQ(edit.error().sentence, "Nothing is priced yet: there is no bid to send.");
    PaperJob undated = on(2);
    undated.date = noDate;
    EXPECT_FALSE(sendBid(undated, m_job.figures, m_workbook.ids()).ok());
}

TEST_F(SendBid, ADamagedPaperIsNotShownAsSent) {
    const SentBid bid = send(2);
    Book damaged = book();
    auto& papers = damaged.sheets[m_job.plan].of<IssuedPaper>();
    IssuedPaper paper = *papers.find(bid.paper);
    paper.paper.text.replace(paper.paper.text.find("Alder"), 5, "Older");
    papers.put(paper);
    const auto shown = sentBidPaper(damaged, bid);
    ASSERT_FALSE(shown.ok());
    EXPECT_THAT(shown.error().sentence, HasSubstr("bid 1 is not what was issued"));
}

TEST(FrozenPaper, KeepsColumnsThatAreStrongOrBelow) {
    Paper paper;
    PaperTable table;
    PaperColumn strong{"Long point"};
    strong.strong = true;
    PaperColumn below{"Note"};
    below.below = true;
    table.columns = {strong, below};
    paper.blocks.emplace_back(table);
    const auto frozen = freezePaper(paper);
    ASSERT_TRUE(frozen.ok());
    EXPECT_EQ(*thawPaper(*frozen), paper);
}

TEST(FrozenPaper, FrozenBeforeThoseWereKeptIsStillRead) {
    const std::string older
        = R"({"head":{"name":"bid","title":"Bid 3","type":"office","letterhead":[],"facts":[],)"
          R"("totals":[],"footer":""},"blocks":[{"title":"","columns":[{"title":"Price",)"
          R"("align":"right","weight":14,"once":false}],"rows":[],"to_fill":false,)"
          R"("block":"table"}]})";
    const auto paper = thawPaper(older);
    ASSERT_TRUE(paper.ok()) << paper.error().sentence;
    EXPECT_FALSE(std::get<PaperTable>(paper->blocks.front()).columns.front().strong);
}

} // namespace
} // namespace miterbook
