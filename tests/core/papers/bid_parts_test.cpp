// SPDX-License-Identifier: GPL-3.0-or-later
// Alternates, allowances, unit prices and the one-page summary of a bid.
#include "papers/bid_parts.h"

#include "papers/bid_paper.h"
#include "papers/sample_job.h"
#include "papers/write_paper.h"

#include <gmock/gmock.h>

namespace miterbook {
namespace {

using testing::HasSubstr;
using testing::Not;

class BidParts : public testing::Test {
protected:
    std::string printed(const std::vector<Alternate>& alternates = {}) const {
        return paperText(bidPaper(m_job.planJob(), m_job.figures, {}, alternates));
    }
    BidSetup& setup() { return m_job.figures.setup; }

    SampleJob m_job;
};

TEST_F(BidParts, AlternatesSayWhatTheyAddOrTakeOff) {
    const std::string text = printed({{Id<Variant>(1), "Crown pack", Money::dollars(1404)},
        {Id<Variant>(2), "No shoe", -Money::cents(8050)}, {Id<Variant>(3), "Handing", Money()}});
    EXPECT_THAT(text, HasSubstr("Alternates, not in the price"));
    EXPECT_THAT(text, HasSubstr("+$1,404.00"));
    EXPECT_THAT(text, HasSubstr("-$80.50"));
    EXPECT_THAT(text, HasSubstr("no change"));
    EXPECT_THAT(printed(), Not(HasSubstr("Alternates")));
}

TEST_F(BidParts, AllowancesAreNamedWithTheirAmounts) {
    EXPECT_THAT(printed(), Not(HasSubstr("Allowances")));
    setup().allowances = {{"Door hardware", PieceOfWork::hardware, Money::dollars(900)}};
    EXPECT_THAT(printed(), HasSubstr("Allowances, in the price"));
    EXPECT_THAT(printed(), HasSubstr("$900.00"));
}

TEST_F(BidParts, UnitPricesAreQuotedWhereTheBidSaysSo) {
    PiecePrice door;
    door.id = Id<PiecePrice>(901);
    door.task = Task::prehungDoor;
    door.price = UnitPrice::tenThousandths(1'852'500);
    door.quoted = true;
    m_job.book.prices.of<PiecePrice>().put(door);
    PiecePrice secret = door;
    secret.id = Id<PiecePrice>(902);
    secret.task = Task::mantel;
    secret.quoted = false;
    m_job.book.prices.of<PiecePrice>().put(secret);
    m_job.terms().hourlyRate = Money::dollars(78);
    m_job.refresh();
    EXPECT_THAT(printed(), Not(HasSubstr("Prices for extras")));
    setup().quoteUnits = true;
    const std::string text = printed();
    EXPECT_THAT(text, HasSubstr("Prices for extras"));
    EXPECT_THAT(text, HasSubstr("Prehung door"));
    EXPECT_THAT(text, HasSubstr("$185.25"));
    EXPECT_THAT(text, HasSubstr("Other work, by the hour"));
    EXPECT_THAT(text, Not(HasSubstr("Mantel")));
}

TEST_F(BidParts, ASummaryHasThePricesAndNoCounts) {
    const Paper whole = bidPaper(m_job.planJob(), m_job.figures, {}, {});
    setup().onePage = true;
    const Paper brief = bidPaper(m_job.planJob(), m_job.figures, {}, {});
    EXPECT_LT(paperText(brief).size(), paperText(whole).size());
    EXPECT_THAT(paperText(brief), Not(HasSubstr("Comprising")));
    EXPECT_THAT(paperText(brief), Not(HasSubstr("Materials")));
    EXPECT_EQ(brief.totals, whole.totals);
}

TEST_F(BidParts, ADraftHasNoNumberAndASentBidHasOne) {
    EXPECT_THAT(printed(), Not(HasSubstr("Number")));
    const Paper sent = bidPaper(
        m_job.planJob(), m_job.figures, {12, 3, std::chrono::year(2026) / 11 / 2}, {});
    EXPECT_EQ(sent.title, "Bid 12, revision 3");
    EXPECT_THAT(sent.footer, HasSubstr("Bid 12, revision 3"));
    EXPECT_THAT(paperText(sent), HasSubstr("3, in place of that of 11/2/2026"));
}

} // namespace
} // namespace miterbook
