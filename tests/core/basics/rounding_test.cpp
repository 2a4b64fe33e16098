// SPDX-License-Identifier: GPL-3.0-or-later
#include "basics/angle.h"
#include "basics/hours.h"
#include "basics/length.h"
#include "basics/money.h"
#include "basics/quantity.h"

#include <gtest/gtest.h>

namespace miterbook {

namespace {

TEST(RoundedQuotient, RoundsHalfAwayFromZero) {
    EXPECT_EQ(roundedQuotient(5, 2), 3);
    EXPECT_EQ(roundedQuotient(-5, 2), -3);
    EXPECT_EQ(roundedQuotient(4, 3), 1);
    EXPECT_EQ(roundedQuotient(5, 3), 2);
    EXPECT_EQ(roundedQuotient(-4, 3), -1);
    EXPECT_EQ(roundedQuotient(0, 7), 0);
}

TEST(Length, FractionsOfAnInchAndTenthsOfAMillimetreAreExact) {
    EXPECT_EQ(Length::sixtyFourths(1).nm(), 396'875);
    EXPECT_EQ(Length::sixtyFourths(64), Length::inches(1));
    EXPECT_EQ(Length::thirtySeconds(32), Length::sixteenths(16));
    EXPECT_EQ(
        Length::tenthsOfMillimetre(254), Length::inches(1)); // the inch is 25.4 mm by definition
    EXPECT_EQ(Length::feet(1), Length::inches(12));
}

TEST(Length, FromComputedInchesGoesToTheNearestNanometre) {
    EXPECT_EQ(Length::fromInches(35.5), Length::sixteenths(35 * 16 + 8));
    EXPECT_EQ(Length::fromInches(-35.5), -Length::sixteenths(35 * 16 + 8));
    EXPECT_EQ(Length::fromInches(1.0 / 3.0).nm(), 8'466'667);
    EXPECT_DOUBLE_EQ(Length::inches(18).toFeet(), 1.5);
    EXPECT_DOUBLE_EQ(Length::inches(1).toMillimetres(), 25.4);
}

TEST(Length, RoundsToAStepHalfAwayFromZero) {
    const Length step = Length::sixteenths(1);
    EXPECT_EQ(roundTo(Length::thirtySeconds(35 * 32 + 31), step), Length::inches(36));
    EXPECT_EQ(roundTo(-Length::thirtySeconds(1), step), -step);
    EXPECT_EQ(roundTo(Length::sixtyFourths(1), step), Length());
    EXPECT_EQ(Length::feet(16) / Length::inches(37), 5); // five 37 in legs out of 16 ft
}

TEST(Money, ShareIsRoundedToTheCent) {
    EXPECT_EQ(share(Money::cents(1'050), Percent::whole(5)), Money::cents(53)); // 52.5 -> 53
    EXPECT_EQ(share(Money::cents(-1'050), Percent::whole(5)), Money::cents(-53));
    // 25 % on 200,000 is 50,000 [pub: engineeringtoolbox.com d_1706]
    EXPECT_EQ(share(Money::dollars(200'000), Percent::whole(25)), Money::dollars(50'000));
    // 64-bit cents times basis points would overflow here; the 128-bit step does not.
    EXPECT_EQ(share(Money::cents(4'000'000'000'000'000'000), Percent::hundred()).cents(),
        4'000'000'000'000'000'000);
}

TEST(Quantity, RunningFeetToTheNearestThousandth) {
    EXPECT_EQ(Quantity::runningFeet(Length::feet(421)), Quantity::count(421));
    EXPECT_EQ(
        Quantity::runningFeet(Length::inches(219) + Length::sixteenths(8)).thousandths(), 18'292);
    EXPECT_EQ(Quantity::runningFeet(-Length::inches(4)).thousandths(), -333);
}

TEST(Quantity, SquareFeetAreExactBeforeTheOneRounding) {
    EXPECT_EQ(Quantity::squareFeet(Length::feet(12), Length::feet(8)), Quantity::count(96));
    EXPECT_EQ(Quantity::squareFeet(Length::inches(1), Length::inches(1)).thousandths(),
        7); // 1/144 = .00694
    EXPECT_EQ(Quantity::squareFeet(Length::inches(18), Length::inches(20)).thousandths(), 2'500);
    // 1/16 in by 1152 in = 72 sq in = half a square foot exactly
    EXPECT_EQ(Quantity::squareFeet(Length::sixteenths(1), Length::inches(1152)).thousandths(), 500);
    EXPECT_EQ(Quantity::squareFeet(Length::feet(300), Length::feet(300)), Quantity::count(90'000));
}

// Rounding sides to whole inches or feet first would be off in the thousandths.
TEST(Quantity, SquareFeetOfMetricSides) {
    // 1 m^2 = 10.7639104 sq ft [calc: 1 / 0.3048^2]
    EXPECT_EQ(
        Quantity::squareFeet(Length::millimetres(1000), Length::millimetres(1000)).thousandths(),
        10'764);
}

TEST(Quantity, CostIsRoundedOnceToTheCent) {
    EXPECT_EQ(cost(Quantity::count(3), UnitPrice::cents(128)), Money::cents(384));
    EXPECT_EQ(cost(Quantity::thousandths(12'345), UnitPrice::tenThousandths(12'800)),
        Money::cents(1'580));                                                          // 15.8016
    EXPECT_EQ(cost(Quantity::thousandths(500), UnitPrice::cents(1)), Money::cents(1)); // .5 cent
    EXPECT_EQ(cost(Quantity::thousandths(-500), UnitPrice::cents(1)), Money::cents(-1));
}

TEST(Units, ConvertPlainly) {
    EXPECT_DOUBLE_EQ(Percent::basisPoints(1'250).fraction(), 0.125);
    EXPECT_DOUBLE_EQ(Angle::hundredths(3'386).toDegrees(), 33.86);
    EXPECT_EQ(Hours::whole(2) + Hours::minutes(30), Hours::minutes(150));
    EXPECT_DOUBLE_EQ(Hours::minutes(90).toDouble(), 1.5);
    EXPECT_DOUBLE_EQ(MinutesPerUnit::hundredths(125).toDouble(), 1.25);
}

} // namespace

} // namespace miterbook
