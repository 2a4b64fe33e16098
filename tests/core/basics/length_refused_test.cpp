// SPDX-License-Identifier: GPL-3.0-or-later
#include "basics/length_text.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace miterbook {

namespace {

using testing::EndsWith;
using testing::HasSubstr;
using testing::StartsWith;

std::string refusal(std::string_view text) {
    const auto read = parseLength(text);
    if (read.ok())
        return "read as " + formatLength(*read);
    EXPECT_EQ(read.error().fault, Fault::badInput);
    return read.error().sentence;
}

TEST(LengthRefused, ZeroDenominator) {
    EXPECT_EQ(refusal("36 1/0"), "\"36 1/0\" divides by zero.");
    EXPECT_EQ(refusal("1/0"), "\"1/0\" divides by zero.");
    EXPECT_EQ(refusal("2' 3/0"), "\"2' 3/0\" divides by zero.");
    EXPECT_EQ(refusal("2' 3 0/0"), "\"2' 3 0/0\" divides by zero.");
}

TEST(LengthRefused, Negative) {
    EXPECT_EQ(refusal("-36"), "\"-36\" is negative; a length cannot be.");
    EXPECT_THAT(refusal(" -1/2"), HasSubstr("is negative"));
    EXPECT_THAT(refusal("\u221236"), HasSubstr("is negative"));
}

TEST(LengthRefused, LongerThanAnythingInAHouse) {
    EXPECT_EQ(refusal("400 ft"), "\"400 ft\" is over 300 ft, longer than anything in a house.");
    EXPECT_THAT(refusal("300' 1/64\""), HasSubstr("over 300 ft"));
    EXPECT_THAT(refusal("3601"), HasSubstr("over 300 ft"));
    EXPECT_THAT(refusal("99999999 m"), HasSubstr("over 300 ft"));
    EXPECT_THAT(parseDoorLength("400-0").error().sentence, HasSubstr("over 300 ft"));
}

TEST(LengthRefused, NumbersThatDoNotFitAreNoLength) {
    EXPECT_THAT(refusal("123456789012"), HasSubstr("is not a length"));
    EXPECT_THAT(refusal("1/123456789012"), HasSubstr("is not a length"));
    EXPECT_THAT(refusal("1.12345678901"), HasSubstr("is not a length"));
}

TEST(LengthRefused, CommaThatMayMeanAThousand) {
    EXPECT_EQ(refusal("1,234"),
        "\"1,234\" may be a thousand or a decimal; write it without a comma, or with a point.");
    EXPECT_THAT(refusal("1,234 mm"), StartsWith("\"1,234 mm\" may be a thousand"));
    EXPECT_THAT(refusal("3' 1,234"), HasSubstr("may be a thousand"));
    EXPECT_EQ(refusal("1234,567 mm"), "read as 48 5/8"); // four digits before: a decimal comma
}

TEST(LengthRefused, PartsThatAreWholes) {
    EXPECT_EQ(refusal("35 17/16"), "\"35 17/16\" has a fraction of one inch or more.");
    EXPECT_THAT(refusal("35 16/16"), HasSubstr("fraction of one inch"));
    EXPECT_THAT(refusal("2' 17/16"), HasSubstr("fraction of one inch"));
    EXPECT_EQ(refusal("2' 12\""), "\"2' 12\"\" has 12 or more inches after the feet.");
    EXPECT_THAT(refusal("2' 12.5"), HasSubstr("after the feet"));
    EXPECT_THAT(parseDoorLength("2-12").error().sentence, HasSubstr("after the feet"));
}

TEST(LengthRefused, Nothing) {
    EXPECT_EQ(refusal(""), "A length is missing.");
    EXPECT_EQ(refusal(" \u00a0\t"), "A length is missing.");
}

class Rubbish : public testing::TestWithParam<const char*> {};

TEST_P(Rubbish, IsNoLength) {
    EXPECT_THAT(
        refusal(GetParam()), EndsWith("is not a length; write it as 35 1/2, 2'11-1/2 or 902mm."));
}

INSTANTIATE_TEST_SUITE_P(All, Rubbish,
    testing::Values("abc", ".", ",5", "35.", "35..5", "1.2.3", "36 1/", "36 /2", "36 1//2", "1/2/3",
        "35.5 1/2", "35 1/2 3/4", "35--1/2", "35 1/2 mm", "2'-", "2' -", "2'3'4", "2.5' 3", "2' x",
        "2-8", "35 1/2 miles", "90 mil", "1e3", "+35", "35 1/2 \"\"", "36 x 60", "(35)", "\xff\xfe",
        "\xe2\x85", "\u0663\u0665"));

TEST(LengthRefused, LongInputIsNotRepeatedInFull) {
    EXPECT_LT(refusal(std::string(100'000, '9')).size(), 200U);
}

} // namespace

} // namespace miterbook
