// SPDX-License-Identifier: GPL-3.0-or-later
#include "papers/write_paper.h"

#include <gtest/gtest.h>

using namespace miterbook;

namespace {

Paper paperWith(std::vector<Cell> cells) {
    Paper paper;
    PaperTable table;
    table.columns.resize(cells.size(), PaperColumn{"c"});
    table.rows.push_back({PaperTable::Kind::plain, std::move(cells)});
    paper.blocks.emplace_back(std::move(table));
    return paper;
}

std::string rowOf(std::string text, std::string exact = {}) {
    return paperCsv(paperWith({{std::move(text), std::move(exact)}, Cell::of("z")}));
}

} // namespace

TEST(WriteCsv, QuotesAsTheStandardSays) { // RFC 4180 section 2 [pub]
    EXPECT_EQ(rowOf("plain"), "c,c\r\nplain,z\r\n");
    EXPECT_EQ(rowOf("a,b"), "c,c\r\n\"a,b\",z\r\n");
    EXPECT_EQ(rowOf("35 1/2\""), "c,c\r\n\"35 1/2\"\"\",z\r\n");
    EXPECT_EQ(rowOf("two\nlines"), "c,c\r\n\"two\nlines\",z\r\n");
}

TEST(WriteCsv, TakesTheExactValue) {
    EXPECT_EQ(rowOf("$1,234.50", "1234.50"), "c,c\r\n1234.50,z\r\n");
    EXPECT_EQ(rowOf("not a number", "=1"), "c,c\r\nnot a number,z\r\n");
}

TEST(WriteCsv, NothingStartsAFormula) {
    for (const char* text : {"=cmd()", "+1", "-2+3", "@sum", "＝1", "\tx"})
        EXPECT_EQ(rowOf(text), std::string("c,c\r\n'") + text + ",z\r\n") << text;
    EXPECT_EQ(rowOf("\rx"), "c,c\r\n\"'\rx\",z\r\n");
}

TEST(WriteCsv, NegativeNumbersStayNumbers) {
    EXPECT_EQ(rowOf("-$12.00", "-12.00"), "c,c\r\n-12.00,z\r\n");
}

TEST(WriteCsv, TablesFollowOneAnother) {
    Paper paper = paperWith({Cell::of("1")});
    paper.blocks.emplace_back(Paragraph{Paragraph::Style::body, {"not a table"}});
    PaperTable second;
    second.title = "=Second";
    second.columns = {{"x"}, {"y"}};
    second.rows = {{PaperTable::Kind::group, {Cell::of("Hall")}}};
    paper.blocks.emplace_back(second);
    EXPECT_EQ(paperCsv(paper), "c\r\n1\r\n\r\n'=Second\r\nx,y\r\nHall,\r\n");
}

TEST(WriteCsv, NoTableIsNothing) {
    EXPECT_EQ(paperCsv({}), "");
}
