// SPDX-License-Identifier: GPL-3.0-or-later
#include "basics/number_text.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace miterbook {

namespace {

using testing::HasSubstr;

TEST(NumberRead, Money) {
    EXPECT_EQ(*parseMoney("1234.5"), Money::cents(123'450));
    EXPECT_EQ(*parseMoney("$1,234.50"), Money::cents(123'450));
    EXPECT_EQ(*parseMoney(" 1,234,567 "), Money::dollars(1'234'567));
    EXPECT_EQ(*parseMoney("-12"), Money::dollars(-12));
    EXPECT_EQ(*parseMoney("-$12.05"), Money::cents(-1'205));
    EXPECT_EQ(*parseMoney(".5"), Money::cents(50));
    EXPECT_EQ(*parseMoney("100,000,000"), Money::dollars(100'000'000));
}

// A decimal comma read as a thousands mark would make 62,5 into 625: it is refused.
TEST(NumberRead, RefusesMoneyThatIsDoubtful) {
    for (const char* text : {"62,5", "1,23", "1,2345", "12,34,567", "1234,567", ",234", "1.234", "",
             ".", "-", "--5", "$$5", "$5$", "five", "5 5", "1e3", "0x10", "\u0665"})
        EXPECT_THAT(parseMoney(text).error().sentence, HasSubstr("is not an amount of money"))
            << text;
    EXPECT_THAT(parseMoney("100,000,000.01").error().sentence, HasSubstr("over 100 million"));
    EXPECT_FALSE(parseMoney("99999999999999999999").ok());
}

TEST(NumberRead, UnitPrice) {
    EXPECT_EQ(*parseUnitPrice("1.28"), UnitPrice::cents(128));
    EXPECT_EQ(*parseUnitPrice("$0.0125"), UnitPrice::tenThousandths(125));
    EXPECT_EQ(*parseUnitPrice("0"), UnitPrice());
    EXPECT_THAT(parseUnitPrice("1.28125").error().sentence, HasSubstr("four decimals at most"));
    EXPECT_THAT(parseUnitPrice("-1").error().sentence, HasSubstr("between 0 and a million"));
    EXPECT_THAT(parseUnitPrice("1000001").error().sentence, HasSubstr("between 0 and a million"));
}

TEST(NumberRead, Percent) {
    EXPECT_EQ(*parsePercent("12.5"), Percent::basisPoints(1'250));
    EXPECT_EQ(*parsePercent("12.5 %"), Percent::basisPoints(1'250));
    EXPECT_EQ(*parsePercent("-5%"), Percent::whole(-5));
    for (const char* text : {"", "%", "12,5", "7.655", "%5%", "half"})
        EXPECT_THAT(parsePercent(text).error().sentence, HasSubstr("is not a percentage")) << text;
    EXPECT_THAT(parsePercent("10001").error().sentence, HasSubstr("not a sensible percentage"));
    EXPECT_THAT(parsePercent("-1000.01").error().sentence, HasSubstr("not a sensible percentage"));
}

TEST(NumberRead, Hours) {
    EXPECT_EQ(*parseHours("7.5"), Hours::minutes(450));
    EXPECT_EQ(*parseHours("7.5 h"), Hours::minutes(450));
    EXPECT_EQ(*parseHours("8h"), Hours::whole(8));
    EXPECT_EQ(*parseHours("7:30"), Hours::minutes(450));
    EXPECT_EQ(*parseHours("7h30"), Hours::minutes(450));
    EXPECT_EQ(*parseHours("45 min"), Hours::minutes(45));
    EXPECT_EQ(*parseHours("0.333"), Hours::minutes(20)); // 19.98 to the nearest minute
}

TEST(NumberRead, RefusesHoursThatAreDoubtful) {
    for (const char* text : {"", "7,5", "7:5", "7:60", "7:300", "-1", "-1:30", "min", "7.5 min",
             "h", "10001", "10001:00", "700000 min", "7:30:00", "seven"})
        EXPECT_THAT(parseHours(text).error().sentence, HasSubstr("is not a time worked")) << text;
}

TEST(NumberRead, MinutesPerUnit) {
    EXPECT_EQ(*parseMinutesPerUnit("1.25"), MinutesPerUnit::hundredths(125));
    EXPECT_EQ(*parseMinutesPerUnit(" 60 "), MinutesPerUnit::whole(60));
    for (const char* text : {"", "-1", "1.255", "1,5", "100000.01"})
        EXPECT_THAT(
            parseMinutesPerUnit(text).error().sentence, HasSubstr("is not a number of minutes"))
            << text;
}

TEST(NumberRead, Quantity) {
    EXPECT_EQ(*parseQuantity("12"), Quantity::count(12));
    EXPECT_EQ(*parseQuantity("1,012.345"), Quantity::thousandths(1'012'345));
    EXPECT_THAT(parseQuantity("12,5").error().sentence, HasSubstr("is not a quantity; write"));
    EXPECT_THAT(parseQuantity("-1").error().sentence, HasSubstr("between 0 and a million"));
    EXPECT_THAT(
        parseQuantity("1000000.001").error().sentence, HasSubstr("between 0 and a million"));
}

TEST(NumberRead, WholeNumbersNameWhatTheyAreFor) {
    EXPECT_EQ(*parseWhole("3", "panes", 1, 4), 3);
    EXPECT_EQ(*parseWhole(" -2 ", "steps", -5, 5), -2);
    EXPECT_EQ(parseWhole("5", "panes", 1, 4).error().sentence,
        "\"5\" is not a whole number from 1 to 4 for panes.");
    for (const char* text : {"", "0", "1.0", "one", "99999999999"})
        EXPECT_THAT(parseWhole(text, "panes", 1, 4).error().sentence, HasSubstr("for panes."))
            << text;
}

} // namespace

} // namespace miterbook
