// SPDX-License-Identifier: GPL-3.0-or-later
#include "widgets/cell_block.h"

#include <gtest/gtest.h>

using namespace Qt::Literals::StringLiterals;

namespace miterbook {
namespace {

TEST(CellBlock, LinesAndTabs) {
    EXPECT_EQ(readCellBlock(u"W1\t36\r\nW2\t48\r\n"_s),
        (CellBlock{{u"W1"_s, u"36"_s}, {u"W2"_s, u"48"_s}}));
    EXPECT_EQ(
        readCellBlock(u"W1\t36\rW2\t48"_s), (CellBlock{{u"W1"_s, u"36"_s}, {u"W2"_s, u"48"_s}}));
}

TEST(CellBlock, InchMarksAreNoQuotes) {
    EXPECT_EQ(readCellBlock(u"35 1/2\"\t60\""_s), (CellBlock{{u"35 1/2\""_s, u"60\""_s}}));
    EXPECT_EQ(readCellBlock(u"\" high\t1"_s), (CellBlock{{u"\" high"_s, u"1"_s}}));
}

TEST(CellBlock, QuotedCellsHoldTabsAndLines) {
    EXPECT_EQ(readCellBlock(u"\"two\nlines\"\t\"a \"\"b\"\"\""_s),
        (CellBlock{{u"two\nlines"_s, u"a \"b\""_s}}));
}

TEST(CellBlock, EmptyCellsKeepTheirPlace) {
    EXPECT_EQ(readCellBlock(u"\ta\t\n"_s), (CellBlock{{u""_s, u"a"_s, u""_s}}));
    EXPECT_TRUE(readCellBlock(u""_s).isEmpty());
}

// A stranger's room name must not become a formula in the spreadsheet it is pasted into.
TEST(CellBlock, FormulasAreGuardedAndComeBack) {
    EXPECT_EQ(
        writeCellBlock({{u"=1+1"_s, u"@x"_s, u"-3"_s, u"2-8"_s}}), u"'=1+1\t'@x\t-3\t2-8\n"_s);
    EXPECT_EQ(readCellBlock(u"'=1+1\t'tis\n"_s), (CellBlock{{u"=1+1"_s, u"'tis"_s}}));
}

TEST(CellBlock, WhatIsWrittenReadsBack) {
    const CellBlock block{
        {u"plain"_s, u"tab\there"_s, u"line\nhere"_s}, {u"\"quoted"_s, u"35 1/2\""_s, u""_s}};
    EXPECT_EQ(readCellBlock(writeCellBlock(block)), block);
}

} // namespace
} // namespace miterbook
