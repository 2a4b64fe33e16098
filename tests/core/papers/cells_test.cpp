// SPDX-License-Identifier: GPL-3.0-or-later
#include "papers/cells.h"
#include "papers/exact_numbers.h"

#include <gtest/gtest.h>

using namespace miterbook;

TEST(Cells, MoneySaysTheSameTwice) {
    EXPECT_EQ(moneyCell(Money::cents(123450), "$"), (Cell{"$1,234.50", "1234.50"}));
    EXPECT_EQ(moneyCell(Money::cents(-5), "$"), (Cell{"-$0.05", "-0.05"}));
}

TEST(Cells, LengthsAreExactInTheColumnsUnit) {
    const Length length = Length::sixteenths(568);
    EXPECT_EQ(lengthCell(length, {LengthUnit::inches, 16}), (Cell{"35 1/2", "35.5"}));
    EXPECT_EQ(lengthCell(length, {LengthUnit::feetInches, 16}), (Cell{"2' 11 1/2\"", "35.5"}));
    EXPECT_EQ(lengthCell(length, {LengthUnit::millimetres, 16}).exact, "901.7");
    EXPECT_EQ(lengthTitle("Long point", {LengthUnit::inches, 16}), "Long point, in");
    EXPECT_EQ(lengthTitle("Long point", {LengthUnit::millimetres, 16}), "Long point, mm");
}

TEST(Cells, SticksAreSaidInFeet) {
    EXPECT_EQ(stickCell(Length::feet(16), {}), (Cell{"16", "16"}));
    EXPECT_EQ(stickCell(Length::inches(92), {}), (Cell{"7' 8\"", "7.667"}));
    EXPECT_EQ(stickCell(Length::millimetres(2400), {LengthUnit::millimetres, 16}),
        (Cell{"2400", "2400"}));
}

TEST(Cells, QuantitiesKeepTheThousandth) {
    EXPECT_EQ(quantityCell(Quantity::thousandths(26917)), (Cell{"26.9", "26.917"}));
    EXPECT_EQ(quantityCell(Quantity::count(12)), (Cell{"12", "12"}));
}

TEST(ExactNumbers, DecimalsHaveNoThousandsMark) {
    EXPECT_EQ(exactDecimal(1234500, 3, 0), "1234.5");
    EXPECT_EQ(exactDecimal(1234500, 2, 2), "12345.00");
    EXPECT_EQ(exactDecimal(5, 2, 2), "0.05");
    EXPECT_EQ(exactDecimal(-5, 3, 0), "-0.005");
    EXPECT_EQ(exactDecimal(0, 0, 0), "0");
}

// The grammar of RFC 8259 section 6 [pub].
TEST(ExactNumbers, KnowsWhatJsonCallsANumber) {
    for (const char* text : {"0", "-0", "12", "12.50", "-0.005", "1e9", "1E-9", "2.5e+3"})
        EXPECT_TRUE(isJsonNumber(text)) << text;
    for (const char* text :
        {"", "-", "01", ".5", "5.", "+1", "1e", "1,000", "0x1", "NaN", "1 ", "12a"})
        EXPECT_FALSE(isJsonNumber(text)) << text;
}
