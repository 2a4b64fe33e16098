// SPDX-License-Identifier: GPL-3.0-or-later
// Feet said as metres: a foot is 0.3048 m exactly, a square foot 0.09290304 m² [pub: international
// yard and pound agreement, 1959].
#include "basics/amount_text.h"
#include "basics/number_text.h"

#include <gtest/gtest.h>

using namespace miterbook;
using enum LengthUnit;

TEST(Amounts, OfFeetAreSaidInMetres) {
    const Quantity thousandFeet = Quantity::count(1000);
    EXPECT_EQ(
        amountSaid(thousandFeet, Unit::linearFoot, millimetres), Quantity::thousandths(304'800));
    EXPECT_EQ(
        amountSaid(thousandFeet, Unit::squareFoot, millimetres), Quantity::thousandths(92'903));
    EXPECT_EQ(unitText(Unit::linearFoot, millimetres), "m");
    EXPECT_EQ(unitText(Unit::squareFoot, millimetres), "m²");
}

TEST(Amounts, AreSaidAsCountedInAShopOfInches) {
    for (const LengthUnit written : {inches, feetInches}) {
        EXPECT_EQ(amountSaid(Quantity::count(7), Unit::linearFoot, written), Quantity::count(7));
        EXPECT_EQ(priceSaid(UnitPrice::tenThousandths(12'345), Unit::squareFoot, written),
            UnitPrice::tenThousandths(12'345));
        EXPECT_EQ(unitText(Unit::linearFoot, written), "LF");
    }
    for (const Unit unit : {Unit::each, Unit::side, Unit::flight, Unit::trip, Unit::hour}) {
        EXPECT_EQ(amountSaid(Quantity::count(7), unit, millimetres), Quantity::count(7));
        EXPECT_EQ(unitText(unit, millimetres), word(unit));
        EXPECT_EQ(minutesSaid(MinutesPerUnit::hundredths(123), unit, millimetres),
            MinutesPerUnit::hundredths(123));
    }
}

TEST(Amounts, TypedAreShownAgainAsTyped) {
    for (const Unit unit : {Unit::linearFoot, Unit::squareFoot}) {
        for (std::int64_t tenths = 0; tenths < 20'000; ++tenths) {
            const Quantity typed = Quantity::thousandths(tenths * 100);
            EXPECT_EQ(formatQuantity(
                          amountSaid(amountCounted(typed, unit, millimetres), unit, millimetres)),
                formatQuantity(typed));
        }
    }
}

TEST(Amounts, PricesTypedAreShownAgainAsTyped) {
    for (const Unit unit : {Unit::linearFoot, Unit::squareFoot}) {
        for (std::int64_t cents = 0; cents < 50'000; ++cents) {
            const UnitPrice typed = UnitPrice::cents(cents);
            ASSERT_EQ(priceSaid(priceCounted(typed, unit, millimetres), unit, millimetres), typed)
                << cents;
        }
    }
}

TEST(Amounts, MinutesTypedAreShownAgainAsTyped) {
    const auto again = [](std::int64_t hundredths, Unit unit) {
        const MinutesPerUnit typed = MinutesPerUnit::hundredths(hundredths);
        return minutesSaid(minutesCounted(typed, unit, millimetres), unit, millimetres).hundredths()
            == hundredths;
    };
    for (std::int64_t step = 0; step < 4000; ++step) {
        ASSERT_TRUE(again(step * 5, Unit::linearFoot)) << step;
        ASSERT_TRUE(again(step * 50, Unit::squareFoot)) << step;
    }
}

TEST(Amounts, PricesOfAWholeHouseStayWithinCents) {
    // 1,000 m at 5.01 a metre: the price for a foot has four decimals, which is 50 cents here.
    const UnitPrice foot = priceCounted(UnitPrice::cents(501), Unit::linearFoot, millimetres);
    const Quantity feet = amountCounted(Quantity::count(1000), Unit::linearFoot, millimetres);
    EXPECT_NEAR(static_cast<double>(cost(feet, foot).cents()), 501'000, 17);
}

TEST(Runs, AreFeetOrMetres) {
    EXPECT_EQ(formatRun(Length::feet(100), inches), "100.0");
    EXPECT_EQ(formatRun(Length::feet(100), millimetres), "30.5");
    EXPECT_EQ(formatRunWithUnit(Length::feet(100), feetInches, 0), "100 ft");
    EXPECT_EQ(formatRunWithUnit(Length::feet(100), millimetres, 2), "30.48 m");
    EXPECT_EQ(runSaid(Length::feet(100), millimetres), Quantity::thousandths(30'480));
    EXPECT_EQ(runSaid(Length::feet(100), inches), Quantity::count(100));
}

TEST(Floors, TypedInSquareMetresAreShownAgain) {
    EXPECT_EQ(floorText(2400, inches), "2400 sq ft");
    EXPECT_EQ(floorText(2400, millimetres), "223 m²");
    for (int said = 0; said < 2000; ++said)
        ASSERT_EQ(floorSaid(floorCounted(said, millimetres), millimetres), said);
}

TEST(Sticks, AreSaidAsTheYardSaysThem) {
    EXPECT_EQ(stickText(Length::feet(14), inches), "14 ft");
    EXPECT_EQ(stickText(Length::inches(90), feetInches), "90\"");
    EXPECT_EQ(stickText(Length::nanometres(4'200'000'000), millimetres), "4200 mm");
}
