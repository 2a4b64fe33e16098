// SPDX-License-Identifier: GPL-3.0-or-later
#include "papers/plain_text.h"
#include "papers/said_above.h"
#include "papers/sample_job.h"
#include "papers/text_table.h"
#include "papers/write_paper.h"

#include <gmock/gmock.h>

#include <sstream>

using namespace miterbook;
using testing::ElementsAre;
using testing::HasSubstr;

namespace {

PaperTable sample() {
    using enum PaperColumn::Align;
    PaperTable table;
    table.columns = {{"Room", left, 10, true}, {"Item", left}, {"Feet", right}};
    const auto add = [&](PaperTable::Kind kind, std::vector<const char*> texts) {
        PaperTable::Row row{kind, {}};
        for (const char* text : texts)
            row.cells.push_back(Cell::of(text));
        table.rows.push_back(row);
    };
    add(PaperTable::Kind::group, {"Upstairs"});
    add(PaperTable::Kind::plain, {"Hall", "base", "12.5"});
    add(PaperTable::Kind::plain, {"Hall", "shoe", "9"});
    add(PaperTable::Kind::total, {"Total", "", "21.5"});
    return table;
}

} // namespace

TEST(TextTable, AlignsAndSetsOff) {
    EXPECT_THAT(textTable(sample(), 40),
        ElementsAre("Room   Item  Feet", "-----  ----  ----", "Upstairs", "Hall   base  12.5",
            "       shoe     9", "-----  ----  ----", "Total        21.5"));
}

TEST(TextTable, WrapsWordsNotNumbers) {
    PaperTable table = sample();
    table.rows[1].cells[1].text = "base around the whole of the landing";
    for (const std::string& line : textTable(table, 30))
        EXPECT_LE(textWidth(line), 30U) << line;
    EXPECT_THAT(textTable(table, 30)[3], testing::EndsWith("12.5"));
}

TEST(TextTable, WithoutColumnsIsNothing) {
    EXPECT_TRUE(textTable({}, 78).empty());
}

TEST(SaidAbove, OnlyWhereAllToTheLeftIsAlike) {
    PaperTable table = sample();
    EXPECT_FALSE(saidAbove(table, 1, 0)); // a group above
    EXPECT_TRUE(saidAbove(table, 2, 0));
    EXPECT_FALSE(saidAbove(table, 2, 1)); // not a `once` column
    EXPECT_FALSE(saidAbove(table, 3, 0)); // a total
    table.columns[1].once = true;
    table.rows[2].cells[1].text = "base";
    table.rows[2].cells[0].text = "Loft";
    EXPECT_FALSE(saidAbove(table, 2, 1));
}

TEST(WriteText, NoLineIsWiderThanThePage) {
    SampleJob job;
    job.builder().name = std::string(300, 'x');
    job.shop().name = "A shop of a name so long that it cannot possibly be set on one line of a "
                      "letterhead by anybody";
    job.figures.setup.scope.assign(200, 'y');
    job.figures.setup.scope += " and more";
    job.refresh();
    for (const auto build : {bidPaper, takeoffPaper, orderPaper}) {
        std::istringstream lines(paperText(build(job.houseJob(), job.figures)));
        for (std::string line; std::getline(lines, line);)
            EXPECT_LE(textWidth(line), 78U) << line;
    }
}

TEST(WriteText, HostileNamesAreOnlyText) {
    SampleJob job;
    job.builder().name = "<img src=x>\x1B[31m\n=cmd()";
    job.refresh();
    const std::string text = paperText(bidPaper(job.planJob(), job.figures));
    EXPECT_THAT(text, HasSubstr("<img src=x> [31m =cmd()"));
    EXPECT_EQ(text.find('\x1B'), std::string::npos);
}
