// SPDX-License-Identifier: GPL-3.0-or-later
#include "plan/drawing_scale.h"

#include <gtest/gtest.h>

namespace miterbook {
namespace {

TEST(DrawingScale, IsReadAsItStandsBelowADrawing) {
    for (const char* text : {"1/4\" = 1'", "1/4 = 1'", "1/4\"=1'-0\"", " 1/4 ", "1:48", "2:96"}) {
        const auto scale = parseDrawingScale(text);
        ASSERT_TRUE(scale.ok()) << text;
        EXPECT_DOUBLE_EQ(*scale, 48) << text;
    }
    EXPECT_DOUBLE_EQ(*parseDrawingScale("1:50"), 50);
    EXPECT_DOUBLE_EQ(*parseDrawingScale("3/16\" = 1'"), 64);
    EXPECT_DOUBLE_EQ(*parseDrawingScale("1\" = 20'"), 240);
}

TEST(DrawingScale, OtherTextIsRefused) {
    for (const char* text : {"", "as noted", "0 = 1'", "1/4 = 0", "1:0", "1:99999", "1/4 = blue"})
        EXPECT_FALSE(parseDrawingScale(text).ok()) << text;
    EXPECT_EQ(parseDrawingScale("N.T.S.").error().sentence,
        "\"N.T.S.\" is no drawing scale; write it as 1/4\" = 1' or 1:50.");
}

TEST(SheetScale, ByTwoPointsKeepsTheFirstInItsPlace) {
    Underlay underlay;
    underlay.scale = Length::inches(1);
    underlay.x = Length::inches(10);
    const PlanPoint a{Length::inches(110), Length::inches(50)};
    const PlanPoint b{Length::inches(210), Length::inches(50)};
    const auto scaled = scaledTo(underlay, a, b, Length::inches(150));
    ASSERT_TRUE(scaled.ok());
    EXPECT_EQ(scaled->scale, Length::fromInches(1.5));
    EXPECT_EQ(scaled->x, Length::inches(-40)); // the dot at 100 stays at 110
    EXPECT_EQ(scaled->y, Length::inches(-25));
    EXPECT_FALSE(scaledTo(underlay, a, a, Length::inches(150)).ok());
    EXPECT_FALSE(scaledTo(underlay, a, b, Length()).ok());
}

TEST(SheetTurn, GoesAboutThePoint) {
    Underlay underlay;
    underlay.x = Length::inches(10);
    const Underlay turned = turnedAbout(underlay, PlanPoint(), Angle::degrees(90));
    EXPECT_EQ(turned.x, Length());
    EXPECT_EQ(turned.y, Length::inches(10));
    EXPECT_EQ(turnedAbout(turned, PlanPoint(), Angle::degrees(-90)), underlay);
}

} // namespace
} // namespace miterbook
