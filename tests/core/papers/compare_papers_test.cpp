// SPDX-License-Identifier: GPL-3.0-or-later
#include "papers/cells.h"
#include "papers/compare_papers.h"
#include "papers/sample_job.h"

#include <gmock/gmock.h>

#include <algorithm>
#include <random>

namespace miterbook {
namespace {

PaperTable priced(const std::vector<std::pair<std::string, int>>& lines) {
    PaperTable table;
    table.title = "Work and price";
    table.columns = {{"Piece of work"}, {"Comprising"}, {"Price"}};
    Money total;
    for (const auto& [name, dollars] : lines) {
        const Money price = Money::dollars(dollars);
        total += price;
        table.rows.push_back({PaperTable::Kind::plain,
            {Cell::of(name), Cell::of("as drawn"), moneyCell(price, "$")}});
    }
    table.rows.push_back(
        {PaperTable::Kind::total, {Cell::of("Total"), Cell::of({}), moneyCell(total, "$")}});
    return table;
}

Paper paperOf(std::vector<Block> blocks) {
    Paper paper;
    paper.blocks = std::move(blocks);
    return paper;
}

TEST(ComparePapers, EachPricedLineWithItsDifference) {
    const auto found = comparePapers(paperOf({priced({{"Doors", 4000}, {"Base", 1000}})}),
        paperOf({priced({{"Doors", 4250}, {"Base", 1000}})}));
    const std::vector<PaperDifference> wanted{
        {"Work and price", "Doors", "$4,000.00", "$4,250.00", Money::dollars(250), false},
        {"Work and price", "Base", "$1,000.00", "$1,000.00", Money(), false},
        {"Work and price", "Total", "$5,000.00", "$5,250.00", Money::dollars(250), true}};
    EXPECT_EQ(found, wanted);
}

TEST(ComparePapers, LinesThatCameAndLinesThatWent) {
    const auto found = comparePapers(paperOf({priced({{"Doors", 4000}, {"Crown", 800}})}),
        paperOf({priced({{"Stairs", 600}, {"Doors", 4000}})}));
    ASSERT_EQ(found.size(), 4U + 2U); // the words of what came and went are lines of their own
    EXPECT_EQ(found[0].line, "Stairs");
    EXPECT_EQ(found[0].before, "");
    EXPECT_EQ(found[0].change, Money::dollars(600));
    const auto gone = std::ranges::find_if(
        found, [](const PaperDifference& each) { return each.line == "Crown" && each.change; });
    ASSERT_NE(gone, found.end());
    EXPECT_EQ(gone->after, "");
    EXPECT_EQ(gone->change, -Money::dollars(800));
    EXPECT_TRUE(found.back().total); // what is gone does not come after the total
}

TEST(ComparePapers, OfWordsOnlyWhatChanged) {
    Paragraph heading{Paragraph::Style::heading, {"Not included"}};
    Paper before = paperOf({heading, Paragraph{Paragraph::Style::list, {"Paint", "Permits"}}});
    before.facts = {{"Builder", "Alder Row Homes"}, {"Date", "11/2/2026"}};
    Paper after = paperOf({heading, Paragraph{Paragraph::Style::list, {"Paint", "Hauling"}}});
    after.facts = {{"Builder", "Alder Row Homes"}, {"Date", "11/9/2026"}};
    const std::vector<PaperDifference> wanted{{"", "Date", "11/2/2026", "11/9/2026", {}, false},
        {"Not included", "Hauling", "", "Hauling", {}, false},
        {"Not included", "Permits", "Permits", "", {}, false}};
    EXPECT_EQ(comparePapers(before, after), wanted);
}

TEST(ComparePapers, RowsOfOneNameAreToldApartByTheirTurn) {
    const auto found = comparePapers(paperOf({priced({{"Other", 10}, {"Other", 20}})}),
        paperOf({priced({{"Other", 10}, {"Other", 25}})}));
    ASSERT_EQ(found.size(), 3U);
    EXPECT_EQ(found[0].change, Money());
    EXPECT_EQ(found[1].change, Money::dollars(5));
}

TEST(ComparePapers, APaperComparedWithItselfHasNotMoved) {
    const SampleJob job;
    const Paper paper = bidPaper(job.planJob(), job.figures);
    const auto found = comparePapers(paper, paper);
    EXPECT_FALSE(found.empty());
    for (const PaperDifference& each : found)
        EXPECT_FALSE(each.changed()) << each.line;
}

TEST(ComparePapers, ChangesOfTheLinesAddUpToThatOfTheTotal) {
    std::mt19937 random(20261126);
    for (int run = 0; run < 200; ++run) {
        const auto some = [&] {
            std::vector<std::pair<std::string, int>> lines;
            for (unsigned i = random() % 7; i > 0; --i)
                lines.emplace_back(
                    "Work " + std::to_string(random() % 5), static_cast<int>(random() % 9000));
            return paperOf({priced(lines)});
        };
        Money lines;
        Money total;
        for (const PaperDifference& each : comparePapers(some(), some()))
            (each.total ? total : lines) += each.change.value_or(Money());
        EXPECT_EQ(lines, total) << run;
    }
}

} // namespace
} // namespace miterbook
