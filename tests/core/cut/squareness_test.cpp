// SPDX-License-Identifier: GPL-3.0-or-later
#include "cut/squareness.h"

#include <gtest/gtest.h>

#include <cmath>

using namespace miterbook;

TEST(OutOfSquare, AnEighthInDiagonalsIsLittleAtTheMiterAndMuchInTheReveal) {
    // trade reference: 36 x 60, 1/8 in the diagonals is 0.12 degrees of skew; the miter gap is
    // about 0.01 in, the reveal runs out about 1/8 along the leg [calc].
    const Length diagonal = Length::fromInches(std::hypot(36.0, 60.0));
    const OutOfSquare out = outOfSquare(Length::inches(36), Length::inches(60),
        diagonal + Length::sixteenths(1), diagonal - Length::sixteenths(1), Length::sixteenths(52));
    EXPECT_NEAR(out.skewDegrees, 0.116, 0.001);
    EXPECT_NEAR(out.miterGap.toInches(), 0.0093, 0.0002);
    EXPECT_NEAR(out.runOut.toInches(), 0.1215, 0.0005);
}

TEST(OutOfSquare, AgreesWithAParallelogramLaidOutByItsCorners) {
    for (const double skew : {0.0, 0.3, 1.0, 4.0}) {
        const double shift = 60 * std::sin(skew * M_PI / 180);
        const double rise = 60 * std::cos(skew * M_PI / 180);
        const OutOfSquare out = outOfSquare(Length::inches(36), Length::inches(60),
            Length::fromInches(std::hypot(36 + shift, rise)),
            Length::fromInches(std::hypot(36 - shift, rise)), Length::inches(3));
        EXPECT_NEAR(out.skewDegrees, skew, 1e-5);
        EXPECT_NEAR(out.runOut.toInches(), 60 * std::tan(skew * M_PI / 180), 1e-5);
    }
}

TEST(OutOfSquare, IsNothingWithoutDiagonals) {
    EXPECT_EQ(outOfSquare(Length::inches(36), Length::inches(60), Length::inches(70), {},
                  Length::inches(3)),
        OutOfSquare());
}

TEST(Bow, IsWhatTheMiddleHasMore) {
    EXPECT_EQ(bowOf(Length::inches(36), Length::sixteenths(36 * 16 + 3), Length::inches(36)),
        Length::sixteenths(3));
    EXPECT_EQ(bowOf(Length::inches(36), Length::inches(36), Length::sixteenths(36 * 16 + 4)),
        -Length::sixteenths(2));
    EXPECT_EQ(bowOf(Length::inches(36), {}, Length::inches(37)), Length());
}
