// SPDX-License-Identifier: GPL-3.0-or-later
#include "papers/job_papers.h"
#include "papers/sample_job.h"
#include "papers/write_paper.h"

#include <gmock/gmock.h>

using namespace miterbook;
using testing::Contains;
using testing::HasSubstr;
using testing::Not;
using testing::Pair;

namespace {

std::vector<PaperTable> tables(const Paper& paper) {
    std::vector<PaperTable> result;
    for (const Block& block : paper.blocks) {
        if (const auto* table = std::get_if<PaperTable>(&block))
            result.push_back(*table);
    }
    return result;
}

std::vector<std::string> texts(const PaperTable::Row& row) {
    std::vector<std::string> result;
    for (const Cell& cell : row.cells)
        result.push_back(cell.text);
    return result;
}

} // namespace

TEST(OrderPaper, DescribesEachStick) {
    const SampleJob job;
    const PaperTable sticks = tables(orderPaper(job.houseJob(), job.figures)).at(0);
    EXPECT_THAT(texts(sticks.rows.at(0)),
        testing::ElementsAre(
            "Flat casing", "11/16 x 3 1/4", "primed pine", "paint grade", "16", "10", "1"));
    EXPECT_THAT(texts(sticks.rows.at(5)),
        testing::ElementsAre("Bench board", "3/4 x 5 1/2", "red oak", "stain grade", "8", "3", ""));
    EXPECT_EQ(sticks.rows.at(5).cells.back().exact, "0");
}

TEST(OrderPaper, CountsHoldTheSpares) {
    const SampleJob job;
    const Paper paper = orderPaper(job.planJob(), job.figures);
    const PaperTable sticks = tables(paper).at(0);
    int sum = 0;
    for (const PaperTable::Row& row : sticks.rows) {
        if (row.kind == PaperTable::Kind::plain)
            sum += std::stoi(row.cells.at(5).exact);
    }
    EXPECT_EQ(sum, 27); // 10 + 4 + 3 + 4 + 3 + 3
    EXPECT_EQ(sticks.rows.back().cells.at(5).exact, "27");
    EXPECT_THAT(paper.totals, Contains(Pair("sticks", (Cell{"27", "27"}))));
    EXPECT_THAT(paper.totals, Contains(Pair("spare sticks", (Cell{"2", "2"}))));
    // 160 + 56 + 3 x 7.71875 + 48 + 48 + 24 ft
    EXPECT_THAT(paper.totals, Contains(Pair("running feet", (Cell{"359.2", "359.156"}))));
}

TEST(OrderPaper, LeavesOutWhatTheBuilderSupplies) {
    const SampleJob job;
    const PaperTable parts = tables(orderPaper(job.planJob(), job.figures)).at(1);
    ASSERT_EQ(parts.rows.size(), 1U);
    EXPECT_THAT(texts(parts.rows.front()), testing::ElementsAre("Passage set, black", "5"));
}

TEST(OrderPaper, ShowsNoPrice) {
    const SampleJob job;
    const Paper paper = orderPaper(job.houseJob(), job.figures);
    const std::string all = paperText(paper) + paperCsv(paper) + paperJson(paper);
    for (const char* number : {"17.17", "29.29", "439.43", "$", "2,784"})
        EXPECT_THAT(all, Not(HasSubstr(number)));
}

TEST(OrderPaper, SaysWhereItGoesAndThatNothingIsReplaced) {
    const SampleJob job;
    const Paper paper = orderPaper(job.houseJob(), job.figures);
    EXPECT_THAT(paper.facts, Contains(Pair("Lot", "14")));
    EXPECT_THAT(
        paper.facts, Contains(Pair("Deliver to", "318 Tansy Court, Fennel Ford, OR 97999")));
    const std::string text = paperText(paper);
    EXPECT_THAT(text, HasSubstr("No substitutions: call first, (503) 555-0142."));
    EXPECT_THAT(text, HasSubstr("Drop spot on the site"));
}

TEST(OrderPaper, SaysWhatIsNotRight) {
    SampleJob job;
    job.figures.buy = {};
    job.figures.buy.problems = {"No stick of Flat casing is priced."};
    const std::string text = paperText(orderPaper(job.planJob(), job.figures));
    EXPECT_THAT(text, HasSubstr("! Not complete"));
    EXPECT_THAT(text, HasSubstr("No stick of Flat casing is priced."));
    EXPECT_THAT(text, HasSubstr("Nothing to order."));
}
