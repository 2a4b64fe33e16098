// SPDX-License-Identifier: GPL-3.0-or-later
#include "papers/paper_list.h"
#include "papers/sample_job.h"
#include "papers/write_paper.h"

#include <gmock/gmock.h>

using namespace miterbook;
using testing::Contains;
using testing::HasSubstr;
using testing::Not;
using testing::Pair;

namespace {

const PaperTable& tableOf(const Paper& paper, std::string_view title) {
    static const PaperTable none;
    for (const Block& block : paper.blocks) {
        const auto* table = std::get_if<PaperTable>(&block);
        if (table && table->title == title)
            return *table;
    }
    ADD_FAILURE() << "no table " << title;
    return none;
}

/// Cents of a plain decimal with two places.
std::int64_t cents(const std::string& exact) {
    std::string digits = exact;
    digits.erase(digits.find('.'), 1);
    return std::stoll(digits);
}

std::string everything(const Paper& paper) {
    return paperText(paper) + paperCsv(paper) + paperJson(paper) + paper.footer;
}

/// A number as it could be printed: "1,317.14" and "1317.14".
std::vector<std::string> moneyTexts(Money money) {
    std::string plain = std::to_string(money.cents() / 100) + '.'
        + (money.cents() % 100 < 10 ? "0" : "") + std::to_string(money.cents() % 100);
    std::string grouped = plain;
    if (grouped.size() > 6)
        grouped.insert(grouped.size() - 6, ",");
    return {plain, grouped};
}

} // namespace

TEST(BidPaper, LinesAddUpToTheTotal) {
    const SampleJob job;
    const Paper paper = bidPaper(job.planJob(), job.figures);
    const PaperTable& table = tableOf(paper, "Work and price");
    ASSERT_EQ(table.rows.size(), job.figures.estimate.works.size() + 1);
    std::int64_t sum = 0;
    for (const PaperTable::Row& row : table.rows) {
        if (row.kind == PaperTable::Kind::plain)
            sum += cents(row.cells.back().exact);
    }
    EXPECT_EQ(table.rows.back().kind, PaperTable::Kind::total);
    EXPECT_EQ(sum, cents(table.rows.back().cells.back().exact));
    EXPECT_EQ(sum, job.figures.estimate.total.price.cents());
    EXPECT_THAT(paper.totals, Contains(Pair("price", table.rows.back().cells.back())));
}

TEST(BidPaper, NeverShowsWhatOnlyTheShopMaySee) {
    const SampleJob job;
    const std::string text = everything(bidPaper(job.houseJob(), job.figures));
    const Estimate& estimate = job.figures.estimate;
    std::vector<Money> secrets{estimate.crewRate, estimate.perManHour, estimate.total.labour,
        job.figures.buy.sticksCost, Money::cents(1'717), Money::cents(2'929)};
    for (const WorkTotal& work : estimate.works) {
        for (const Money money :
            {work.labour, work.material, work.consumables, work.overhead, work.profit, work.cost()})
            secrets.push_back(money);
        EXPECT_THAT(text, Not(HasSubstr(std::to_string(work.hours.minutes()))));
    }
    for (const Money secret : secrets) {
        for (const std::string& written : moneyTexts(secret))
            EXPECT_THAT(text, Not(HasSubstr(written)));
    }
    for (const char* word : {"7.13", "77.1", "21.37", "17.61", "hour", "cost", "profit", "markup",
             "margin", "overhead", "burden", "wage", "spare"})
        EXPECT_THAT(text, Not(HasSubstr(word))) << word;
}

TEST(BidPaper, NamesElevationAndOptionsOfAHouse) {
    const SampleJob job;
    const Paper paper = bidPaper(job.houseJob(), job.figures);
    EXPECT_THAT(paper.facts, Contains(Pair("House", "Fennel Creek 14")));
    EXPECT_THAT(paper.facts, Contains(Pair("Plan", "The Juniper")));
    EXPECT_THAT(paper.facts, Contains(Pair("Elevation", "B, farmhouse")));
    EXPECT_THAT(paper.facts, Contains(Pair("Option", "Window bench in the study")));
    EXPECT_THAT(paper.facts, Contains(Pair("Lot", "14")));
    EXPECT_THAT(paper.facts, Contains(Pair("Address", "318 Tansy Court, Fennel Ford, OR 97999")));
}

TEST(BidPaper, StandsAsLongAsTheTermsSay) {
    SampleJob job;
    EXPECT_THAT(
        bidPaper(job.planJob(), job.figures).facts, Contains(Pair("Valid until", "12/25/2026")));
    job.terms().validDays = 0;
    job.shop().monthFirst = false;
    job.refresh();
    const Paper paper = bidPaper(job.planJob(), job.figures);
    EXPECT_THAT(paper.facts, Contains(Pair("Date", "25 Nov 2026")));
    EXPECT_THAT(paper.facts, Not(Contains(Pair("Valid until", testing::_))));
}

TEST(BidPaper, LicenceOnlyWhenThereIsOne) {
    SampleJob job;
    EXPECT_THAT(bidPaper(job.planJob(), job.figures).letterhead, Contains("License no. 212999"));
    job.shop().licence = "Reg. QT-7";
    job.refresh();
    EXPECT_THAT(bidPaper(job.planJob(), job.figures).letterhead, Contains("Reg. QT-7"));
    job.shop().licence = " ";
    job.refresh();
    EXPECT_EQ(bidPaper(job.planJob(), job.figures).letterhead.size(), 3U);
}

TEST(BidPaper, SaysThatItIsNotComplete) {
    SampleJob job;
    EXPECT_THAT(paperText(bidPaper(job.planJob(), job.figures)), Not(HasSubstr("Not complete")));
    job.figures.estimate.problems = {
        "The book has no rate for \"mantel\".", "The book has no rate for \"mantel\"."};
    job.figures.takeoff.remarks.push_back(
        {Remark::Weight::problem, {}, "W9 has no profile for its casing; that is not counted."});
    const Paper paper = bidPaper(job.planJob(), job.figures);
    const auto* note = std::get_if<Paragraph>(&paper.blocks.front());
    ASSERT_TRUE(note);
    EXPECT_EQ(note->style, Paragraph::Style::caution);
    EXPECT_EQ(note->lines.size(), 3U);
    EXPECT_THAT(paperText(paper), HasSubstr("! Not complete"));
    EXPECT_THAT(paperJson(paper), HasSubstr("\"cautions\": [\"Not complete"));
}

TEST(BidPaper, SaysWhatItCannotKnow) {
    SampleJob job;
    job.book.sheets.clear();
    job.shop().name.clear();
    job.figures.estimate.works.clear();
    job.refresh();
    const std::string text = paperText(bidPaper(job.houseJob(), job.figures));
    EXPECT_THAT(text, HasSubstr("elevation and options cannot be named"));
    EXPECT_THAT(text, HasSubstr("no name in the book"));
    EXPECT_THAT(text, HasSubstr("Nothing is priced yet."));
}

TEST(BidPaper, LeavesOutSectionsWithoutText) {
    SampleJob job;
    job.terms().paymentTerms = " \n";
    job.figures.setup.scope.clear();
    job.figures.setup.exclusions.clear();
    job.refresh();
    const std::string text = paperText(bidPaper(job.planJob(), job.figures));
    EXPECT_THAT(text, Not(HasSubstr("Payment")));
    EXPECT_THAT(text, Not(HasSubstr("Scope")));
    EXPECT_THAT(text, Not(HasSubstr("Not included")));
    EXPECT_THAT(text, HasSubstr("Included\n--------\n- One walk"));
}

TEST(PaperList, FindsPapersByName) {
    const SampleJob job;
    for (const PaperKind& kind : paperKinds) {
        const Paper paper = kind.build(job.planJob(), job.figures);
        EXPECT_EQ(paper.name, kind.name);
        EXPECT_EQ(paper.title, kind.title);
        EXPECT_EQ(findPaper(kind.name), &kind);
    }
    EXPECT_EQ(findPaper("invoice"), nullptr);
}
