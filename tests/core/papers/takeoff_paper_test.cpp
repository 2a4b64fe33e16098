// SPDX-License-Identifier: GPL-3.0-or-later
#include "papers/job_papers.h"
#include "papers/sample_job.h"
#include "papers/takeoff_rows.h"
#include "papers/write_paper.h"

#include <gmock/gmock.h>

#include <map>

using namespace miterbook;
using testing::Contains;
using testing::ElementsAre;
using testing::HasSubstr;
using testing::Not;
using testing::Pair;

namespace {

std::map<std::string, PaperTable> tables(const Paper& paper) {
    std::map<std::string, PaperTable> result;
    for (const Block& block : paper.blocks) {
        if (const auto* table = std::get_if<PaperTable>(&block))
            result[table->title] = *table;
    }
    return result;
}

std::vector<std::string> texts(const PaperTable::Row& row) {
    std::vector<std::string> result;
    for (const Cell& cell : row.cells)
        result.push_back(cell.text);
    return result;
}

bool hasRow(const PaperTable& table, const std::vector<std::string>& wanted) {
    return std::ranges::any_of(
        table.rows, [&](const PaperTable::Row& row) { return texts(row) == wanted; });
}

} // namespace

TEST(TakeoffPaper, EachNumberSaysWhereItComesFrom) {
    const SampleJob job;
    const auto found = tables(takeoffPaper(job.planJob(), job.figures));
    const PaperTable& ground = found.at("First floor");
    // 6 heads of 42 7/8 and 6 aprons of 42 7/8 in: 42.875 ft
    EXPECT_TRUE(
        hasRow(ground, {"101 Great room", "Windows", "Flat casing", "42.9", "LF", "12", "W1"}));
    EXPECT_TRUE(hasRow(ground, {"101 Great room", "Doors", "prehung door", "5", "each", "", "D1"}));
    EXPECT_TRUE(hasRow(
        ground, {"No room", "Doors", "exterior door, inside casing", "1", "each", "", "D2"}));
    EXPECT_TRUE(hasRow(found.at("Whole plan"),
        {"Plan", "Trips", "trip, set-up and clean-up", "2", "trip", "", "The Juniper"}));
}

TEST(TakeoffPaper, SharesOfSeveralSourcesAreSaidApart) {
    Totals totals;
    ProfileTotal total;
    total.shares = {{{Id<Opening>(1), {}, {}, "W1"}, Length::feet(10), 4},
        {{Id<Opening>(2), {}, {}, "W2"}, Length::inches(99), 3}};
    total.pieces = 7;
    totals.profiles.push_back(total);
    const std::vector<TakeoffRow> rows = takeoffRows(totals, LengthUnit::inches);
    ASSERT_EQ(rows.size(), 1U);
    EXPECT_EQ(rows.front().from, "W1 10, W2 8.3");
    EXPECT_EQ(rows.front().amount, Quantity::thousandths(18'250));
    EXPECT_EQ(rows.front().pieces, 7);
}

TEST(TakeoffPaper, PlacesAddUpToTheWhole) {
    const SampleJob job;
    const auto found = tables(takeoffPaper(job.planJob(), job.figures));
    std::map<std::string, double> sums;
    for (const char* title : {"First floor", "Second floor", "Whole plan"}) {
        for (const PaperTable::Row& row : found.at(title).rows)
            sums[row.cells[1].text + row.cells[2].text] += std::stod(row.cells[3].exact);
    }
    const PaperTable& all = found.at("In all");
    EXPECT_EQ(all.rows.size(), sums.size());
    for (const PaperTable::Row& row : all.rows)
        EXPECT_NEAR(
            sums[row.cells[0].text + row.cells[1].text], std::stod(row.cells[2].exact), 1e-9);
}

TEST(TakeoffPaper, EveryPieceFromShortToLongPoint) {
    const SampleJob job;
    const auto found = tables(takeoffPaper(job.planJob(), job.figures));
    EXPECT_TRUE(hasRow(found.at("First floor: pieces"),
        {"101 Great room", "W1", "head", "Flat casing", "6", "36 3/8", "42 7/8", "miter 45"}));
    std::size_t rows = 0;
    for (const char* title : {"First floor: pieces", "Second floor: pieces"})
        rows += found.at(title).rows.size();
    EXPECT_EQ(rows, job.figures.takeoff.pieces.size());
}

TEST(TakeoffPaper, EndsThatDifferAreSaidBoth) {
    SampleJob job;
    Piece& piece = job.figures.takeoff.pieces.front();
    piece.left = {EndCut::cope, 0, 0};
    piece.right = {EndCut::miter, 31.62, 33.86};
    const auto found = tables(takeoffPaper(job.planJob(), job.figures));
    EXPECT_EQ(found.at("First floor: pieces").rows.front().cells.back().text,
        "cope / miter 31.6 bevel 33.9");
}

TEST(TakeoffPaper, RunsWithTheirCorners) {
    const SampleJob job;
    const auto found = tables(takeoffPaper(job.planJob(), job.figures));
    EXPECT_THAT(texts(found.at("First floor: runs and corners").rows.at(0)),
        ElementsAre("101 Great room", "Eased base", "26.9", "3", "1", "1"));
}

TEST(TakeoffPaper, OneLevelAlone) {
    const SampleJob job;
    PaperJob upper = job.planJob();
    upper.level = job.upper;
    const Paper paper = takeoffPaper(upper, job.figures);
    const auto found = tables(paper);
    EXPECT_TRUE(found.contains("Second floor"));
    EXPECT_FALSE(found.contains("First floor"));
    EXPECT_FALSE(found.contains("Whole plan"));
    EXPECT_THAT(paper.facts, Contains(Pair("Level", "Second floor")));
    EXPECT_THAT(paper.totals, Contains(Pair("windows", (Cell{"2", "2"}))));
    EXPECT_THAT(paper.totals, Contains(Pair("doors", (Cell{"0", "0"}))));
    EXPECT_THAT(paperText(paper), Not(HasSubstr("spliced")));
}

TEST(TakeoffPaper, CountsOpeningsAndFeet) {
    const SampleJob job;
    const Paper paper = takeoffPaper(job.planJob(), job.figures);
    EXPECT_THAT(paper.totals, Contains(Pair("windows", (Cell{"8", "8"}))));
    EXPECT_THAT(paper.totals, Contains(Pair("doors", (Cell{"6", "6"}))));
    EXPECT_THAT(paper.totals, Contains(Pair("base LF", (Cell{"27", "27"}))));
    EXPECT_THAT(paperText(paper), HasSubstr("- Great room: wall 1 is longer"));
}

TEST(TakeoffPaper, SaysWhenThereIsNothing) {
    SampleJob job;
    job.figures.takeoff = {};
    EXPECT_THAT(
        paperText(takeoffPaper(job.planJob(), job.figures)), HasSubstr("Nothing to take off yet."));
}
