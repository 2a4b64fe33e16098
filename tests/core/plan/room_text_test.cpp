// SPDX-License-Identifier: GPL-3.0-or-later
#include "plan/room_text.h"

#include <gtest/gtest.h>

namespace miterbook {
namespace {

constexpr Length ft(int feet, int inches = 0) {
    return Length::inches(feet * 12 + inches);
}

constexpr LengthStyle feetInches{LengthUnit::feetInches, 16};

std::vector<Wall> walls(std::string_view text, LengthUnit unit = LengthUnit::inches) {
    const Result<std::vector<Wall>> result = parseWalls(text, unit);
    EXPECT_TRUE(result.ok()) << text;
    return result.valueOr({});
}

std::string refusal(std::string_view text) {
    const Result<std::vector<Wall>> result = parseWalls(text, LengthUnit::inches);
    const Error* error = result.ok() ? nullptr : &result.error();
    return error ? error->sentence : "not refused";
}

TEST(ParseWalls, RectangleHasFourInsideCorners) {
    for (const char* text : {"12' x 14'6\"", "12' X 14'6\"", "12' \xC3\x97 14'6\"", " 144x174 "}) {
        const std::vector<Wall> room = walls(text);
        ASSERT_EQ(room.size(), 4U) << text;
        EXPECT_EQ(room[0].length, ft(12));
        EXPECT_EQ(room[1].length, ft(14, 6));
        EXPECT_EQ(room[2].length, ft(12));
        EXPECT_EQ(room[3].length, ft(14, 6));
        for (const Wall& wall : room)
            EXPECT_EQ(wall.corner, Corner::inside);
        EXPECT_EQ(perimeter(room), ft(53));
    }
}

TEST(ParseWalls, OutlineKnowsInsideAndOutsideCorners) {
    const std::vector<Wall> room = walls("14', 10', 6' ^ 4', 8', 14'");
    ASSERT_EQ(room.size(), 6U);
    EXPECT_EQ(room[2].length, ft(6));
    EXPECT_EQ(room[2].corner, Corner::outside);
    EXPECT_EQ(room[3].length, ft(4));
    EXPECT_EQ(room[3].corner, Corner::inside);
    EXPECT_EQ(room[5].corner, Corner::inside);
    EXPECT_EQ(perimeter(room), ft(56));
}

TEST(ParseWalls, TrailingPointLeavesItOpen) {
    EXPECT_EQ(walls("12' .").at(0).corner, Corner::open);
    const std::vector<Wall> three = walls("12', 10', 4' .");
    EXPECT_EQ(three.at(1).corner, Corner::inside);
    EXPECT_EQ(three.at(2).corner, Corner::open);
    EXPECT_EQ(walls("12', 10', 4'").at(2).corner, Corner::inside);
}

TEST(ParseWalls, OneOrTwoWallsCannotCloseAndAreOpen) {
    EXPECT_EQ(walls("12'").at(0).corner, Corner::open);
    EXPECT_EQ(walls("12', 10'").at(1).corner, Corner::open);
}

TEST(ParseWalls, GapsAnglesAndBareWalls) {
    const std::vector<Wall> room = walls(
        "9' | 12' @135, 5' @112.5 no base, 4' no crown no base, 3'");
    ASSERT_EQ(room.size(), 5U);
    EXPECT_EQ(room[0].corner, Corner::open);
    EXPECT_EQ(room[1].angle, Angle::degrees(135));
    EXPECT_EQ(room[2].angle, Angle::hundredths(11250));
    EXPECT_FALSE(room[2].base);
    EXPECT_TRUE(room[2].crown);
    EXPECT_FALSE(room[3].base);
    EXPECT_FALSE(room[3].crown);
    EXPECT_TRUE(room[4].base);
}

TEST(ParseWalls, BareNumbersFollowTheUnit) {
    EXPECT_EQ(
        walls("3000 x 4000", LengthUnit::millimetres).at(1).length, Length::millimetres(4000));
}

TEST(ParseWalls, NothingIsNoWalls) {
    EXPECT_TRUE(walls("").empty());
    EXPECT_TRUE(walls("  \t").empty());
}

TEST(ParseWalls, RefusalsNameTheWall) {
    EXPECT_EQ(refusal("14', , 6'"), "Wall 2: its length is missing.");
    EXPECT_EQ(refusal("14', 10' @200, 6'"),
        "Wall 2: an angle between two walls lies between 0 and 180 degrees.");
    EXPECT_EQ(refusal("14', 10' @wide, 6'"), "Wall 2: \"wide\" is not an angle in degrees.");
    EXPECT_EQ(refusal("14', 10', 0, 6'"), "Wall 3: \"0\" is no length for a wall.");
    EXPECT_EQ(refusal("14', 10', 36 1/0").rfind("Wall 3: ", 0), 0U);
    EXPECT_EQ(refusal("14' x lots").rfind("Wall 2: ", 0), 0U);
    EXPECT_EQ(refusal("400' x 10'").rfind("Wall 1: ", 0), 0U);
    EXPECT_EQ(refusal("-4' x 10'").rfind("Wall 1: ", 0), 0U);
}

TEST(FormatWalls, WritesARectangleTheShortWay) {
    EXPECT_EQ(formatWalls(walls("12' x 14'6\""), {}), "144 x 174");
    EXPECT_EQ(formatWalls(walls("144, 174, 144, 174"), {}), "144 x 174");
    EXPECT_EQ(formatWalls(walls("144, 174, 144, 173"), {}), "144, 174, 144, 173");
    EXPECT_EQ(formatWalls({}, {}), "");
}

TEST(FormatWalls, ReadsBackAsTheSameWalls) {
    for (const char* text : {"12' x 14'6\"", "14', 10', 6' ^ 4', 8', 14'", "12' .", "12', 10' .",
             "9' | 12' @135, 5' @112.5 no base, 4' no base no crown, 3'", "12', 10', 4' .",
             "144 @90.05, 174, 144, 174", ""}) {
        const std::vector<Wall> room = walls(text);
        EXPECT_EQ(walls(formatWalls(room, {})), room) << text;
        EXPECT_EQ(walls(formatWalls(room, feetInches)), room) << text;
    }
}

TEST(Perimeter, OfNoWallsIsNothing) {
    EXPECT_EQ(perimeter({}), Length());
}

} // namespace
} // namespace miterbook
