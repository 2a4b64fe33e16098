// SPDX-License-Identifier: GPL-3.0-or-later
#include "papers/sample_job.h"
#include "papers/write_paper.h"

#include <nlohmann/json.hpp>

#include <gtest/gtest.h>

using namespace miterbook;
using nlohmann::json;

namespace {

Paper smallPaper() {
    Paper paper;
    paper.name = "bid";
    PaperTable table;
    table.title = "Work \"and\" price\n";
    table.columns = {{"Work"}, {"Price"}};
    table.rows = {{PaperTable::Kind::group, {Cell::of("Ground")}},
        {PaperTable::Kind::plain, {Cell::of("doors\x01 \xFF"), {"$1,234.50", "1234.50"}}},
        {PaperTable::Kind::total, {Cell::of("Total"), {"-$0.05", "-0.05"}}}};
    paper.blocks.emplace_back(table);
    paper.totals = {{"price", {"$1,234.50", "1234.50"}}, {"note", Cell::of("none")}};
    return paper;
}

} // namespace

TEST(WriteJson, HasTheAgreedForm) {
    const json read = json::parse(paperJson(smallPaper()));
    EXPECT_EQ(read["paper"], "bid");
    ASSERT_EQ(read["tables"].size(), 1U);
    const json& table = read["tables"][0];
    EXPECT_EQ(table["title"], "Work \"and\" price\n");
    EXPECT_EQ(table["columns"], (json{"Work", "Price"}));
    EXPECT_EQ(table["rows"][0], (json{"Ground", ""}));
    EXPECT_EQ(table["rows"][1], (json{"doors\x01 \xEF\xBF\xBD", 1234.5}));
    EXPECT_EQ(read["totals"]["price"], 1234.5);
    EXPECT_EQ(read["totals"]["note"], "none");
    EXPECT_FALSE(read.contains("cautions"));
}

TEST(WriteJson, NumbersKeepTheirDecimals) {
    const std::string text = paperJson(smallPaper());
    EXPECT_NE(text.find("1234.50]"), std::string::npos);
    EXPECT_NE(text.find(", -0.05]"), std::string::npos);
}

TEST(WriteJson, EmptyPaperIsStillJson) {
    const json read = json::parse(paperJson({}));
    EXPECT_TRUE(read["tables"].is_array());
    EXPECT_TRUE(read["totals"].is_object());
    Paper paper;
    paper.blocks.emplace_back(PaperTable{});
    EXPECT_TRUE(json::parse(paperJson(paper))["tables"][0]["rows"].empty());
}

TEST(WriteJson, EveryRowOfEveryPaperIsAsWideAsItsTable) {
    const SampleJob job;
    for (const auto build : {bidPaper, takeoffPaper, orderPaper}) {
        const json read = json::parse(paperJson(build(job.houseJob(), job.figures)));
        ASSERT_FALSE(read["tables"].empty());
        for (const json& table : read["tables"]) {
            for (const json& row : table["rows"])
                EXPECT_EQ(row.size(), table["columns"].size());
        }
    }
}

TEST(WriteJson, PricesAddUpAsRead) {
    const SampleJob job;
    const json read = json::parse(paperJson(bidPaper(job.planJob(), job.figures)));
    double sum = 0;
    const json& rows = read["tables"][0]["rows"];
    for (std::size_t i = 0; i + 1 < rows.size(); ++i)
        sum += rows[i].back().get<double>();
    EXPECT_NEAR(sum, read["totals"]["price"].get<double>(), 0.001);
}
