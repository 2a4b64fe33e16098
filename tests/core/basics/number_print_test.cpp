// SPDX-License-Identifier: GPL-3.0-or-later
#include "basics/number_text.h"

#include <gtest/gtest.h>

namespace miterbook {

namespace {

TEST(NumberPrint, Money) {
    EXPECT_EQ(formatMoney(Money::cents(123'450)), "1,234.50");
    EXPECT_EQ(formatMoney(Money::cents(-123'450)), "-1,234.50");
    EXPECT_EQ(formatMoney(Money::cents(5)), "0.05");
    EXPECT_EQ(formatMoney(Money()), "0.00");
    EXPECT_EQ(formatMoney(Money::cents(99'999)), "999.99");
    EXPECT_EQ(formatMoney(Money::cents(100'000'000)), "1,000,000.00");
}

TEST(NumberPrint, MoneyWithTheBooksSign) {
    EXPECT_EQ(formatMoney(Money::cents(123'450), "$"), "$1,234.50");
    EXPECT_EQ(formatMoney(Money::cents(-5), "$"), "-$0.05");
    EXPECT_EQ(formatMoney(Money::dollars(1), "C$"), "C$1.00");
}

TEST(NumberPrint, UnitPriceShowsTwoToFourDecimals) {
    EXPECT_EQ(formatUnitPrice(UnitPrice::cents(128)), "1.28");
    EXPECT_EQ(formatUnitPrice(UnitPrice::tenThousandths(125)), "0.0125");
    EXPECT_EQ(formatUnitPrice(UnitPrice::tenThousandths(12'850)), "1.285");
    EXPECT_EQ(formatUnitPrice(UnitPrice()), "0.00");
}

TEST(NumberPrint, Percent) {
    EXPECT_EQ(formatPercent(Percent::basisPoints(1'250)), "12.5");
    EXPECT_EQ(formatPercent(Percent::whole(20)), "20");
    EXPECT_EQ(formatPercent(Percent::basisPoints(765)), "7.65");
    EXPECT_EQ(formatPercent(Percent::basisPoints(-50)), "-0.5");
}

TEST(NumberPrint, Hours) {
    EXPECT_EQ(formatHours(Hours::minutes(450)), "7.5");
    EXPECT_EQ(formatHours(Hours::minutes(3)), "0.1"); // .05 away from zero
    EXPECT_EQ(formatHours(Hours::minutes(100), 2), "1.67");
    EXPECT_EQ(formatHours(Hours::minutes(90), 0), "2");
    EXPECT_EQ(formatHours(Hours::minutes(-90)), "-1.5");
    EXPECT_EQ(formatMinutesPerUnit(MinutesPerUnit::hundredths(125)), "1.25");
    EXPECT_EQ(formatMinutesPerUnit(MinutesPerUnit::whole(60)), "60");
}

TEST(NumberPrint, Quantity) {
    EXPECT_EQ(formatQuantity(Quantity::thousandths(421'347)), "421.3");
    EXPECT_EQ(formatQuantity(Quantity::count(12)), "12");
    EXPECT_EQ(formatQuantity(Quantity::thousandths(12'345), 3), "12.345");
    EXPECT_EQ(formatQuantity(Quantity::thousandths(12'345), 2), "12.35");
    EXPECT_EQ(formatQuantity(Quantity::thousandths(12'500), 0), "13");
    EXPECT_EQ(formatQuantity(Quantity::thousandths(999'960), 1), "1000");
    EXPECT_EQ(formatQuantity(Quantity::thousandths(-50), 1), "-0.1");
}

} // namespace

} // namespace miterbook
