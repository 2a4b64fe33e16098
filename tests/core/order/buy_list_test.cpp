// SPDX-License-Identifier: GPL-3.0-or-later
#include "order/buy_list.h"

#include <gmock/gmock.h>

namespace miterbook {
namespace {

using ::testing::ElementsAre;
using ::testing::IsEmpty;

constexpr Id<Profile> casing(3);
constexpr Id<Profile> base(4);

CutPattern bought(int feet, int times) {
    return {Length::feet(feet), false, Money::dollars(feet), times, {Length::feet(feet)}};
}

CutPattern offcut(int feet, int times) {
    return {Length::feet(feet), true, Money(), times, {Length::feet(feet)}};
}

StickPlan planOf(Id<Profile> profile, std::vector<CutPattern> patterns) {
    StickPlan plan;
    plan.profile = profile;
    plan.patterns = std::move(patterns);
    return plan;
}

PriceBook bookWithSpares(int spares) {
    PriceBook book;
    Practice practice;
    practice.id = Id<Practice>(1);
    practice.spareSticks = spares;
    book.of<Practice>().put(practice);
    return book;
}

PartCount partOf(PartUse use, int count) {
    PartCount part;
    part.use = use;
    part.count = count;
    return part;
}

TEST(BuyList, SticksOfOneLengthAreOneLineLongestFirst) {
    const BuyList list = buyList({},
        {planOf(casing, {bought(8, 2), bought(16, 1), bought(8, 3)}),
            planOf(base, {bought(12, 4)})},
        {});
    EXPECT_THAT(list.sticks,
        ElementsAre(BuyLine{casing, Length::feet(16), 1, 0, Money::dollars(16)},
            BuyLine{casing, Length::feet(8), 5, 0, Money::dollars(8)},
            BuyLine{base, Length::feet(12), 4, 0, Money::dollars(12)}));
    EXPECT_EQ(list.sticksCost, Money::dollars(16 + 40 + 48));
    EXPECT_EQ(list.total(), list.sticksCost);
    EXPECT_THAT(list.problems, IsEmpty());
}

TEST(BuyList, OffcutsComeOutOfTheRackAndCostNothing) {
    const BuyList list = buyList(
        {}, {planOf(casing, {offcut(3, 1), offcut(5, 2), offcut(3, 1), bought(8, 1)})}, {});
    EXPECT_THAT(list.rack,
        ElementsAre(RackLine{casing, Length::feet(5), 2}, RackLine{casing, Length::feet(3), 2}));
    ASSERT_EQ(list.sticks.size(), 1U);
    EXPECT_EQ(list.sticksCost, Money::dollars(8));
}

TEST(BuyList, SparesAreOfTheMostBoughtLengthOfEachProfile) {
    const BuyList list = buyList({},
        {planOf(casing, {bought(16, 2), bought(8, 5)}),
            planOf(base, {bought(16, 3), bought(12, 3)})},
        bookWithSpares(2));
    ASSERT_EQ(list.sticks.size(), 4U);
    EXPECT_EQ(list.sticks[0].spare, 0);
    EXPECT_EQ(list.sticks[1].spare, 2);
    EXPECT_EQ(list.sticks[2].spare, 2); // of two alike the longer
    EXPECT_EQ(list.sticks[3].spare, 0);
    EXPECT_EQ(list.sticks[1].cost(), Money::dollars(7 * 8));
    EXPECT_EQ(list.sticksCost, Money::dollars(32 + 56 + 80 + 36));
}

TEST(BuyList, WhatComesOutOfTheRackAloneNeedsNoSpare) {
    const BuyList list = buyList({}, {planOf(casing, {offcut(5, 2)})}, bookWithSpares(2));
    EXPECT_THAT(list.sticks, IsEmpty());
}

TEST(BuyList, PartsAreGatheredByUse) {
    PriceBook book;
    book.of<Part>().put({Id<Part>(1), "Square baluster", PartUse::baluster, Money::cents(950)});
    book.of<Part>().put({Id<Part>(2), "Knob", PartUse::passageSet, Money::dollars(24), true});
    Takeoff takeoff;
    takeoff.parts = {partOf(PartUse::baluster, 12), partOf(PartUse::passageSet, 3),
        partOf(PartUse::baluster, 20)};
    const BuyList list = buyList(takeoff, {}, book);
    EXPECT_THAT(list.parts,
        ElementsAre(PartLine{PartUse::passageSet, "Knob", 3, Money::dollars(24), true},
            PartLine{PartUse::baluster, "Square baluster", 32, Money::cents(950), false}));
    EXPECT_EQ(list.partsCost, Money::dollars(304)); // the builder buys the knobs
    EXPECT_EQ(list.total(), Money::dollars(304));
}

TEST(BuyList, SaysWhatIsMissing) {
    StickPlan plan = planOf(casing, {});
    plan.problem = "No stick of Flat casing is stocked.";
    Takeoff takeoff;
    takeoff.parts = {partOf(PartUse::newel, 2)};
    const BuyList list = buyList(takeoff, {plan}, {});
    EXPECT_THAT(list.problems,
        ElementsAre("No stick of Flat casing is stocked.", "The book has no price for \"newel\"."));
    ASSERT_EQ(list.parts.size(), 1U); // still to be bought
    EXPECT_EQ(list.parts[0].name, "newel");
    EXPECT_EQ(list.partsCost, Money());
}

} // namespace
} // namespace miterbook
