// SPDX-License-Identifier: GPL-3.0-or-later
#include "bid/spares.h"

#include <gtest/gtest.h>

namespace miterbook {
namespace {

CutPattern bought(int feet, int times, int cents) {
    CutPattern pattern;
    pattern.stick = Length::feet(feet);
    pattern.times = times;
    pattern.price = Money::cents(cents);
    return pattern;
}

TEST(SpareSticks, AreOfTheLengthThatIsBoughtMost) {
    StickPlan plan;
    plan.patterns = {bought(16, 3, 2400), bought(12, 2, 1800), bought(12, 2, 1800)};
    EXPECT_EQ(spareSticks(plan, 2), (SpareSticks{Length::feet(12), 2, Money::cents(1800)}));
    EXPECT_EQ(spareSticks(plan, 2)->cost(), Money::cents(3600));
}

TEST(SpareSticks, AreTheLongerOfEquals) {
    StickPlan plan;
    plan.patterns = {bought(8, 3, 900), bought(14, 3, 2100)};
    EXPECT_EQ(spareSticks(plan, 1)->length, Length::feet(14));
}

TEST(SpareSticks, AreNotTakenFromTheRack) {
    StickPlan plan;
    plan.patterns = {bought(8, 3, 0)};
    plan.patterns[0].offcut = true;
    EXPECT_EQ(spareSticks(plan, 1), std::nullopt);
    EXPECT_EQ(spareSticks(StickPlan(), 1), std::nullopt);
    EXPECT_EQ(spareSticks(plan, 0), std::nullopt);
}

} // namespace
} // namespace miterbook
