// SPDX-License-Identifier: GPL-3.0-or-later
#include "basics/length_text.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace miterbook {

namespace {

using testing::HasSubstr;

Size inches(std::int64_t width, std::int64_t height) {
    return {Length::inches(width), Length::inches(height)};
}

struct Written {
    const char* text;
    Size size;
};

class SizeRead : public testing::TestWithParam<Written> {};

TEST_P(SizeRead, IsExact) {
    const auto read = parseSize(GetParam().text);
    ASSERT_TRUE(read.ok()) << read.error().sentence;
    EXPECT_EQ(*read, GetParam().size) << GetParam().text;
}

// 2868 = 2 ft 8 in x 6 ft 8 in [common practice]; window call-outs such as 3050 are makers' own.
INSTANTIATE_TEST_SUITE_P(RunTogether, SizeRead,
    testing::Values(Written{"3068", inches(36, 80)}, Written{"2868", inches(32, 80)},
        Written{"3050", inches(36, 60)}, Written{"21068", inches(34, 80)},
        Written{"30610", inches(36, 82)}, Written{"210610", inches(34, 82)},
        Written{"16070", inches(192, 84)}, Written{" 3068 ", inches(36, 80)}));

INSTANTIATE_TEST_SUITE_P(TwoNumbers, SizeRead,
    testing::Values(Written{"36 x 60", inches(36, 60)}, Written{"36x60", inches(36, 60)},
        Written{"36X60", inches(36, 60)}, Written{"36 by 60", inches(36, 60)},
        Written{"36BY60", inches(36, 60)}, Written{"36\" x 60\"", inches(36, 60)},
        Written{"36\u2033\u00a0\u00d7\u00a060\u2033", inches(36, 60)},
        Written{"36 1/2 x 60", {Length::sixteenths(36 * 16 + 8), Length::inches(60)}}));

INSTANTIATE_TEST_SUITE_P(FeetAndInches, SizeRead,
    testing::Values(Written{"2-8 x 6-8", inches(32, 80)}, Written{"2-8x6-8", inches(32, 80)},
        Written{"3'0\" \u00d7 5'0\"", inches(36, 60)}, Written{"3' x 5'", inches(36, 60)},
        Written{"3'-0\"x6'-8\"", inches(36, 80)}, Written{"2/8 x 6/8", inches(32, 80)},
        Written{"3/0x6/8", inches(36, 80)}, Written{"3 x 5 ft", inches(36, 60)}));

INSTANTIATE_TEST_SUITE_P(OneUnitForBoth, SizeRead,
    testing::Values(Written{"902 x 2040 mm", {Length::millimetres(902), Length::millimetres(2040)}},
        Written{"902mm x 2040", {Length::millimetres(902), Length::millimetres(2040)}},
        Written{"90,2 x 204 cm", {Length::millimetres(902), Length::millimetres(2040)}},
        Written{"0.9 x 2.04 m", {Length::millimetres(900), Length::millimetres(2040)}},
        Written{"36 x 60 in", inches(36, 60)}));

TEST(SizeReadBare, FollowsTheShopsUnit) {
    const auto bare = parseSize("902 x 2040", LengthUnit::millimetres);
    EXPECT_EQ(*bare, (Size{Length::millimetres(902), Length::millimetres(2040)}));
    EXPECT_EQ(*parseSize("36\" x 60", LengthUnit::millimetres), inches(36, 60));
    EXPECT_EQ(*parseSize("36 x 60\"", LengthUnit::millimetres), inches(36, 60));
}

std::string refusal(std::string_view text) {
    const auto read = parseSize(text);
    return read.ok() ? "read as " + formatLength(read->width) + " x " + formatLength(read->height)
                     : read.error().sentence;
}

TEST(SizeRefused, DigitsWithTwoReadingsNameBoth) {
    EXPECT_EQ(
        refusal("11068"), "\"11068\" may be 1-10 x 6-8 or 11-0 x 6-8; write it as 1-10 x 6-8.");
    EXPECT_THAT(refusal("10610"), HasSubstr("may be"));
}

TEST(SizeRefused, DigitsWithoutAReading) {
    for (const char* text : {"36", "306", "0068", "30000", "2008", "3068000", "99999"})
        EXPECT_THAT(refusal(text), HasSubstr("is not a size; write it as 3068")) << text;
}

TEST(SizeRefused, SaysWhichHalfIsWrong) {
    EXPECT_EQ(refusal("36 x 1/0"), "In the size \"36 x 1/0\": \"1/0\" divides by zero.");
    EXPECT_EQ(refusal("36 x "), "In the size \"36 x \": A length is missing.");
    EXPECT_EQ(refusal("tall x 60"),
        "In the size \"tall x 60\": \"tall\" is not a length; write it as 35 1/2, 2'11-1/2 or "
        "902mm.");
    EXPECT_THAT(refusal("36 x 400'"), HasSubstr("over 300 ft"));
    EXPECT_THAT(refusal("36 x 60 x 1"), HasSubstr("\"60 x 1\" is not a length"));
    EXPECT_THAT(refusal("-36 x 60"), HasSubstr("is negative"));
}

TEST(SizeRefused, OneNumberIsNoSize) {
    for (const char* text : {"", "36\"", "3-0", "door"})
        EXPECT_THAT(refusal(text), HasSubstr("is not a size")) << text;
}

} // namespace

} // namespace miterbook
