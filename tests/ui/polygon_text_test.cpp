// SPDX-License-Identifier: GPL-3.0-or-later
#include "stages/plan/polygon_text.h"

#include "plan/plan_checks.h"

#include <gtest/gtest.h>

namespace miterbook {
namespace {

TEST(PolygonText, AGableTypedSideBySide) {
    const auto sides = parseSides("30, 24 @135, 17, 24 @ 135", LengthUnit::inches);
    ASSERT_TRUE(sides.ok());
    ASSERT_EQ(sides->size(), 4U);
    EXPECT_EQ((*sides)[0], (PolygonSide{Length::inches(30), Angle::degrees(90)}));
    EXPECT_EQ((*sides)[1], (PolygonSide{Length::inches(24), Angle::degrees(135)}));
}

TEST(PolygonText, WritesWhatItReads) {
    const LengthStyle style;
    const std::string text = "30 1/2, 24 @135, 17, 12 @22.5";
    const auto sides = parseSides(text, style.unit);
    ASSERT_TRUE(sides.ok());
    EXPECT_EQ(formatSides(*sides, style), text);
    EXPECT_TRUE(parseSides("  ", style.unit)->empty());
    EXPECT_EQ(formatSides({}, style), "");
}

TEST(PolygonText, NamesTheSideThatCannotBeRead) {
    const auto bad = parseSides("30, wide, 12", LengthUnit::inches);
    ASSERT_FALSE(bad.ok());
    EXPECT_TRUE(bad.error().sentence.starts_with("Side 2: ")) << bad.error().sentence;
    EXPECT_FALSE(parseSides("30 @x", LengthUnit::inches).ok());
    EXPECT_FALSE(parseSides("30,", LengthUnit::inches).ok());
}

} // namespace
} // namespace miterbook
