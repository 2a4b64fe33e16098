// SPDX-License-Identifier: GPL-3.0-or-later
// Values of the Wood Handbook: how moist wood gets, and how much it moves.
#include "cut/moisture.h"

#include <gtest/gtest.h>

using namespace miterbook;

namespace {

struct Resting {
    double fahrenheit;
    double humidity;
    double moisture;
};

class TableValue : public testing::TestWithParam<Resting> {};

} // namespace

TEST_P(TableValue, IsFoundByTheEquation) {
    const Resting& value = GetParam();
    EXPECT_NEAR(equilibriumMoisture(value.fahrenheit, value.humidity), value.moisture, 0.1);
}

// [pub] Wood Handbook FPL-GTR-282 (2021), table 4-2; the handbook calls finer not meaningful.
INSTANTIATE_TEST_SUITE_P(WoodHandbook, TableValue,
    testing::Values(Resting{30, .75, 14.9}, Resting{30, .95, 24.3}, Resting{70, .05, 1.3},
        Resting{70, .30, 6.2}, Resting{70, .50, 9.2}, Resting{70, .75, 14.4},
        Resting{70, .85, 17.9}, Resting{70, .95, 23.9}, Resting{100, .50, 8.7},
        Resting{100, .90, 19.5}));

TEST(ChangeCoefficient, IsThatOfTheHandbook) {
    // [pub] FPL-GTR-190 (2010), table 13-5, radial / tangential.
    EXPECT_DOUBLE_EQ(changeCoefficient(Wood::redOak, Grain::edge), .00158);
    EXPECT_DOUBLE_EQ(changeCoefficient(Wood::redOak, Grain::flat), .00369);
    EXPECT_DOUBLE_EQ(changeCoefficient(Wood::redAlder, Grain::flat), .00256);
    EXPECT_DOUBLE_EQ(changeCoefficient(Wood::hardMaple, Grain::flat), .00353);
    EXPECT_DOUBLE_EQ(changeCoefficient(Wood::walnut, Grain::edge), .00190);
    EXPECT_DOUBLE_EQ(changeCoefficient(Wood::whitePine, Grain::flat), .00212);
    for (const auto& entry : Words<Wood>::list)
        EXPECT_GT(changeCoefficient(entry.value, Grain::flat),
            changeCoefficient(entry.value, Grain::edge));
}

TEST(ChangeCoefficient, ComesOutOfTheShrinkage) {
    // [pub] FPL-GTR-190 (2010), table 4-3: green to oven-dry shrinkage, percent.
    EXPECT_NEAR(coefficientFromShrinkage(4.6), changeCoefficient(Wood::poplar, Grain::edge), 5e-6);
    EXPECT_NEAR(coefficientFromShrinkage(8.2), changeCoefficient(Wood::poplar, Grain::flat), 5e-6);
    EXPECT_NEAR(
        coefficientFromShrinkage(4.8), changeCoefficient(Wood::douglasFir, Grain::edge), 5e-6);
    EXPECT_NEAR(
        coefficientFromShrinkage(7.6), changeCoefficient(Wood::douglasFir, Grain::flat), 5e-6);
    EXPECT_NEAR(coefficientFromShrinkage(3.7), changeCoefficient(Wood::cherry, Grain::edge), 5e-6);
    EXPECT_NEAR(coefficientFromShrinkage(7.1), changeCoefficient(Wood::cherry, Grain::flat), 5e-6);
}

TEST(WidthChange, DoesNotComeBackToWhereItBegan) {
    // Flat-grained white fir 232 mm wide, 8 to 11 % and back [mem: Wood Handbook, chapter 13]; the
    // sum is D C dM [calc].
    const double c = changeCoefficient(Wood::whiteFir, Grain::flat);
    const Length swollen = widthChange(Length::millimetres(232), c, 8, 11);
    EXPECT_NEAR(swollen.toMillimetres(), 1.705, 0.001);
    const Length back = widthChange(Length::millimetres(232) + swollen, c, 11, 8);
    EXPECT_NEAR(back.toMillimetres(), -1.718, 0.001);
}

TEST(WidthChange, OfAnAlderBoard) {
    // [pub] WOOD magazine, September 2021: 8 in x .0026 x 6 points = .1248 in.
    EXPECT_NEAR(widthChange(Length::inches(8), .0026, 6, 12).toInches(), .1248, 1e-6);
}

TEST(MiterChange, OpensTheHeelWhereTheWoodDries) {
    // 3 1/2 in flat-grain white pine, 4 points: .042 in [calc].
    const double c = changeCoefficient(Wood::whitePine, Grain::flat);
    const MiterChange drying = miterChange(Length::sixteenths(56), c, 12, 8);
    EXPECT_NEAR(drying.gap.toInches(), .042, .0005);
    EXPECT_EQ(drying.opens, MiterEnd::heel);
    const MiterChange swelling = miterChange(Length::sixteenths(56), c, 8, 12);
    EXPECT_EQ(swelling.gap, drying.gap);
    EXPECT_EQ(swelling.opens, MiterEnd::toe);
    EXPECT_EQ(miterChange(Length::sixteenths(56), c, 8, 8).opens, MiterEnd::none);
}
