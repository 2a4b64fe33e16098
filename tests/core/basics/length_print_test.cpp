// SPDX-License-Identifier: GPL-3.0-or-later
#include "basics/length_text.h"

#include <gtest/gtest.h>
#include <random>

namespace miterbook {

namespace {

constexpr LengthStyle sixteenths{LengthUnit::inches, 16};
constexpr LengthStyle thirtySeconds{LengthUnit::inches, 32};
constexpr LengthStyle feetInches{LengthUnit::feetInches, 16};
constexpr LengthStyle millimetres{LengthUnit::millimetres, 16};

TEST(LengthPrint, InchesWithAReducedFraction) {
    EXPECT_EQ(formatLength(Length::sixteenths(35 * 16 + 8), sixteenths), "35 1/2");
    EXPECT_EQ(formatLength(Length::sixteenths(3), sixteenths), "3/16");
    EXPECT_EQ(formatLength(Length::inches(36), sixteenths), "36");
    EXPECT_EQ(formatLength(Length(), sixteenths), "0");
    EXPECT_EQ(formatLength(Length::thirtySeconds(35 * 32 + 31), thirtySeconds), "35 31/32");
    EXPECT_EQ(formatLength(Length::thirtySeconds(6), thirtySeconds), "3/16");
}

TEST(LengthPrint, RoundsHalfAwayFromZeroAndCarries) {
    EXPECT_EQ(formatLength(Length::thirtySeconds(35 * 32 + 31), sixteenths), "36");
    EXPECT_EQ(formatLength(Length::thirtySeconds(35 * 32 + 1), sixteenths), "35 1/16");
    EXPECT_EQ(formatLength(Length::sixtyFourths(35 * 64 + 1), sixteenths), "35");
    EXPECT_EQ(formatLength(Length::sixtyFourths(35 * 64 + 63), thirtySeconds), "36");
    EXPECT_EQ(formatLength(Length::sixtyFourths(12 * 64 - 1), feetInches), "1' 0\"");
}

TEST(LengthPrint, FeetAndInches) {
    EXPECT_EQ(formatLength(Length::sixteenths(35 * 16 + 8), feetInches), "2' 11 1/2\"");
    EXPECT_EQ(formatLength(Length::feet(3), feetInches), "3' 0\"");
    EXPECT_EQ(formatLength(Length::feet(3) + Length::sixteenths(8), feetInches), "3' 1/2\"");
    EXPECT_EQ(formatLength(Length::inches(11), feetInches), "11\"");
    EXPECT_EQ(formatLength(Length(), feetInches), "0\"");
}

TEST(LengthPrint, MillimetresWithAtMostOneDecimal) {
    EXPECT_EQ(formatLength(Length::millimetres(902), millimetres), "902");
    EXPECT_EQ(formatLength(Length::tenthsOfMillimetre(9024), millimetres), "902.4");
    EXPECT_EQ(formatLength(Length::inches(1), millimetres), "25.4");
    EXPECT_EQ(formatLength(Length::sixteenths(1), millimetres), "1.6");            // 1.5875
    EXPECT_EQ(formatLength(Length::nanometres(999'960'000), millimetres), "1000"); // carries
}

TEST(LengthPrint, NegativesGetOneLeadingMinus) {
    EXPECT_EQ(formatLength(-Length::sixteenths(8), sixteenths), "-1/2");
    EXPECT_EQ(formatLength(-Length::sixteenths(35 * 16 + 8), feetInches), "-2' 11 1/2\"");
    EXPECT_EQ(formatLength(-Length::millimetres(2), millimetres), "-2");
    EXPECT_EQ(formatLength(-Length::tenthsOfMillimetre(5), millimetres), "-0.5");
    EXPECT_EQ(formatLength(-Length::nanometres(1), sixteenths), "0");
    EXPECT_EQ(exactInches(-Length::sixteenths(8)), "-0.5");
}

TEST(LengthPrint, WithTheUnitMark) {
    const Length length = Length::sixteenths(35 * 16 + 8);
    EXPECT_EQ(formatLengthWithUnit(length, sixteenths), "35 1/2\"");
    EXPECT_EQ(formatLengthWithUnit(length, feetInches), "2' 11 1/2\"");
    EXPECT_EQ(formatLengthWithUnit(Length::millimetres(902), millimetres), "902 mm");
}

TEST(LengthPrint, DecimalFeet) {
    // 219 1/2 in of casing round a 36 x 60 window = 18.29 ft [calc: 219.5 / 12 = 18.2917].
    EXPECT_EQ(formatFeet(Length::sixteenths(219 * 16 + 8), 2), "18.29");
    EXPECT_EQ(formatFeet(Length::inches(192)), "16.0");
    EXPECT_EQ(formatFeet(Length::inches(18), 0), "2");
    EXPECT_EQ(formatFeet(-Length::inches(18), 1), "-1.5");
}

TEST(LengthPrint, ExactInches) {
    EXPECT_EQ(exactInches(Length::sixteenths(35 * 16 + 8)), "35.5");
    EXPECT_EQ(exactInches(Length::sixteenths(80 * 16 + 3)), "80.1875");
    EXPECT_EQ(exactInches(Length::sixtyFourths(1)), "0.015625");
    EXPECT_EQ(exactInches(Length::inches(100)), "100");
    EXPECT_EQ(exactInches(Length()), "0");
}

// Whatever a length is, its exact inches read back as the same nanometres.
TEST(LengthPrint, ExactInchesReadBackUnchanged) {
    std::mt19937_64 random(20261125);
    std::uniform_int_distribution<std::int64_t> any(0, longestSensible.nm());
    for (int i = 0; i < 2000; ++i) {
        const Length length = Length::nanometres(any(random));
        const auto read = parseLength(exactInches(length));
        ASSERT_TRUE(read.ok()) << read.error().sentence;
        EXPECT_EQ(read->nm(), length.nm());
    }
}

// Every printed fraction reads back as the length rounded to that fraction, in both unit styles.
TEST(LengthPrint, PrintedFractionsReadBack) {
    for (const LengthStyle style : {sixteenths, thirtySeconds, feetInches}) {
        const Length step = Length::thirtySeconds(32 / style.denominator);
        for (std::int64_t n = 0; n < 64 * 40; ++n) {
            const Length length = Length::sixtyFourths(n);
            const auto read = parseLength(formatLengthWithUnit(length, style));
            ASSERT_TRUE(read.ok()) << read.error().sentence;
            EXPECT_EQ(*read, roundTo(length, step)) << formatLength(length, style);
        }
    }
}

} // namespace

} // namespace miterbook
