// SPDX-License-Identifier: GPL-3.0-or-later
#include "basics/length_text.h"

#include <gtest/gtest.h>

namespace miterbook {

namespace {

struct Written {
    const char* text;
    Length length;
};

constexpr Length halfInch = Length::sixteenths(8);
constexpr Length thirtyFiveAndHalf = Length::inches(35) + halfInch;

class LengthRead : public testing::TestWithParam<Written> {};

TEST_P(LengthRead, IsExact) {
    const auto read = parseLength(GetParam().text);
    ASSERT_TRUE(read.ok()) << read.error().sentence;
    EXPECT_EQ(read->nm(), GetParam().length.nm()) << GetParam().text;
}

INSTANTIATE_TEST_SUITE_P(Inches, LengthRead,
    testing::Values(Written{"35 1/2", thirtyFiveAndHalf}, Written{"35-1/2\"", thirtyFiveAndHalf},
        Written{"35 - 1/2", thirtyFiveAndHalf}, Written{"  35  1/2  ", thirtyFiveAndHalf},
        Written{"35 1/2 in", thirtyFiveAndHalf}, Written{"35 1/2in.", thirtyFiveAndHalf},
        Written{"35 1/2 Inches", thirtyFiveAndHalf}, Written{"35.5", thirtyFiveAndHalf},
        Written{"35,5", thirtyFiveAndHalf}, Written{"35.50\"", thirtyFiveAndHalf},
        Written{"1 inch", Length::inches(1)}, Written{"0", Length()},
        Written{"11/16", Length::sixteenths(11)}, Written{"1/2\"", halfInch},
        Written{".5", halfInch}, Written{"0,125", Length::sixtyFourths(8)},
        Written{"5/4", Length::sixteenths(20)},
        Written{"35 63/64", Length::sixtyFourths(35 * 64 + 63)},
        Written{"35''", Length::inches(35)}));

INSTANTIATE_TEST_SUITE_P(FeetAndInches, LengthRead,
    testing::Values(Written{"2'11-1/2", thirtyFiveAndHalf},
        Written{"2' 11 1/2\"", thirtyFiveAndHalf}, Written{"2'-11 1/2\"", thirtyFiveAndHalf},
        Written{"2'-11-1/2\"", thirtyFiveAndHalf}, Written{"2' - 11 1/2\"", thirtyFiveAndHalf},
        Written{"2ft 11.5in", thirtyFiveAndHalf}, Written{"2 ft. 11 1/2 in.", thirtyFiveAndHalf},
        Written{"2 feet 11 1/2 inches", thirtyFiveAndHalf}, Written{"3 ft", Length::feet(3)},
        Written{"1 foot", Length::feet(1)}, Written{"3'", Length::feet(3)},
        Written{"3ft 2in", Length::inches(38)}, Written{"2' 1/2\"", Length::feet(2) + halfInch},
        Written{"2.5'", Length::inches(30)}, Written{"0'-6\"", Length::inches(6)},
        Written{"300'", longestSensible}));

INSTANTIATE_TEST_SUITE_P(Metric, LengthRead,
    testing::Values(Written{"902mm", Length::millimetres(902)},
        Written{"902 MM", Length::millimetres(902)}, Written{"90.2 cm", Length::millimetres(902)},
        Written{"90,2 cm", Length::millimetres(902)}, Written{"0.902 m", Length::millimetres(902)},
        Written{"0,902m", Length::millimetres(902)},
        Written{"902.4mm", Length::tenthsOfMillimetre(9024)},
        Written{"2 m", Length::millimetres(2000)}, Written{"0.000001mm", Length::nanometres(1)}));

INSTANTIATE_TEST_SUITE_P(TypographicMarks, LengthRead,
    testing::Values(Written{"35\u00bd\u2033", thirtyFiveAndHalf},
        Written{"35\u00a01/2", thirtyFiveAndHalf}, Written{"35-\u00bd", thirtyFiveAndHalf},
        Written{"2\u2032\u00a011\u202f\u00bd\u2033", thirtyFiveAndHalf},
        Written{"2\u201911\u00bd\u201d", thirtyFiveAndHalf},
        Written{"2\u2032\u201311 1\u20442\u2033", thirtyFiveAndHalf},
        Written{"\u00bc", Length::sixteenths(4)}, Written{"1\u00be", Length::sixteenths(28)},
        Written{"\u215b\u2033", Length::sixteenths(2)}, Written{"3\u215c", Length::sixteenths(54)},
        Written{"\u215d", Length::sixteenths(10)}, Written{"5\u215e\"", Length::sixteenths(94)}));

TEST(LengthReadInThirds, GoesToTheNearestNanometre) {
    EXPECT_EQ(parseLength("1/3")->nm(), 8'466'667);    // 25 400 000 / 3 = 8 466 666.67 [calc]
    EXPECT_EQ(parseLength("1 1/3")->nm(), 33'866'667); // whole inches stay exact
    EXPECT_EQ(parseLength("2/3'")->nm(), 203'200'000); // 8 in exactly
}

TEST(LengthReadBare, FollowsTheShopsUnit) {
    EXPECT_EQ(*parseLength("902", LengthUnit::millimetres), Length::millimetres(902));
    EXPECT_EQ(*parseLength("902,5", LengthUnit::millimetres), Length::tenthsOfMillimetre(9025));
    EXPECT_EQ(*parseLength("36", LengthUnit::feetInches), Length::inches(36));
    // An inch mark or a fraction says inches whatever the shop's unit is.
    EXPECT_EQ(*parseLength("36\"", LengthUnit::millimetres), Length::inches(36));
    EXPECT_EQ(*parseLength("35 1/2", LengthUnit::millimetres), thirtyFiveAndHalf);
    EXPECT_EQ(*parseLength("3/4", LengthUnit::millimetres), Length::sixteenths(12));
}

// Feet-inches with a dash for doors [common practice]: 2-8 is 2 ft 8 in.
TEST(DoorLength, ReadsFeetDashInches) {
    EXPECT_EQ(*parseDoorLength("2-8"), Length::inches(32));
    EXPECT_EQ(*parseDoorLength("6-0"), Length::feet(6));
    EXPECT_EQ(*parseDoorLength("2 - 10\""), Length::inches(34));
    EXPECT_EQ(*parseDoorLength("2-8 1/2"), Length::inches(32) + halfInch);
    EXPECT_EQ(*parseDoorLength("2-8-1/2"), Length::inches(32) + halfInch);
    EXPECT_EQ(*parseDoorLength("2\u20138"), Length::inches(32));
}

TEST(DoorLength, StillReadsInchesWithAFraction) {
    EXPECT_EQ(*parseDoorLength("35-1/2"), thirtyFiveAndHalf);
    EXPECT_EQ(*parseDoorLength("2'8\""), Length::inches(32));
    EXPECT_EQ(*parseDoorLength("813", LengthUnit::millimetres), Length::millimetres(813));
}

} // namespace

} // namespace miterbook
