// SPDX-License-Identifier: GPL-3.0-or-later
#include "cut/label_sheets.h"

#include "cut/cut_checks.h"

#include <gtest/gtest.h>

#include <set>

using namespace miterbook;

TEST(LabelSheets, LieOnTheirPaper) {
    for (const LabelSheet& sheet : commonLabelSheets()) {
        const double wide = sheet.left.toInches() + sheet.columns * sheet.width.toInches()
            + (sheet.columns - 1) * sheet.gap.toInches();
        const double high = sheet.top.toInches() + sheet.rows * sheet.height.toInches();
        const std::string name = labelSheetName(sheet);
        // Letter 8 1/2 x 11 in, A4 210 x 297 mm [pub: ISO 216].
        EXPECT_LE(wide, (sheet.isA4 ? 210 / 25.4 : 8.5) + 1e-6) << name;
        EXPECT_LE(high, (sheet.isA4 ? 297 / 25.4 : 11.0) + 1e-6) << name;
        // What lies left of the first label lies right of the last: within 1/16 in the middle.
        const double right = (sheet.isA4 ? 210 / 25.4 : 8.5) - wide;
        EXPECT_NEAR(right, sheet.left.toInches(), 1.0 / 16) << name;
    }
}

TEST(LabelSheets, AreSettingsThatTheBenchTakes) {
    std::set<std::string> names;
    for (const LabelSheet& sheet : commonLabelSheets()) {
        names.insert(labelSheetName(sheet));
        Bench bench;
        bench.firstClamps = 7;
        const Bench with = withLabelSheet(bench, sheet);
        EXPECT_TRUE(checkBench(with).ok()) << labelSheetName(sheet);
        EXPECT_TRUE(printsOn(with, sheet));
        EXPECT_EQ(with.firstClamps, 7) << "nothing else moves";
    }
    EXPECT_EQ(names.size(), commonLabelSheets().size());
    EXPECT_TRUE(printsOn(Bench(), commonLabelSheets().front())) << "as a new book begins";
    EXPECT_FALSE(printsOn(Bench(), commonLabelSheets().back()));
    EXPECT_EQ(labelSheetName(commonLabelSheets().front()), "30 a sheet, 2 5/8 x 1 in, Letter");
}
