// SPDX-License-Identifier: GPL-3.0-or-later
#include "plan/plan_checks.h"

#include <gtest/gtest.h>

namespace miterbook {
namespace {

std::string said(const Result<void>& result) {
    return result.ok() ? std::string() : result.error().sentence;
}

Opening window() {
    Opening row;
    row.id = Id<Opening>(1);
    row.mark = "W4";
    row.width = Length::inches(36);
    row.height = Length::inches(60);
    return row;
}

/// What checkOpening says of a good window after a change.
template <class Change>
std::string saidOf(Change change, Missing missing = Missing::refused) {
    Opening row = window();
    change(row);
    return said(checkOpening(row, missing));
}

TEST(CheckOpening, FindsNothingWrongWithAGoodOne) {
    EXPECT_EQ(said(checkOpening(window())), "");
}

TEST(CheckOpening, RefusesSizesThatAreNone) {
    EXPECT_EQ(saidOf([](Opening& o) { o.width = {}; }), "W4 has no width.");
    EXPECT_EQ(saidOf([](Opening& o) { o.height = {}; }), "W4 has no height.");
    EXPECT_EQ(saidOf([](Opening& o) { o.height = Length::inches(-3); }),
        "W4 has a height of -3\", which is negative.");
    EXPECT_EQ(
        saidOf([](Opening& o) { o.reveal = Length::inches(-1); }).rfind("W4 has a reveal", 0), 0U);
}

TEST(CheckOpening, LetsSizesBeMissingWhileTyping) {
    EXPECT_EQ(saidOf([](Opening& o) { o.width = o.height = {}; }, Missing::allowed), "");
    EXPECT_NE(saidOf([](Opening& o) { o.width = Length::feet(-1); }, Missing::allowed), "");
}

TEST(CheckOpening, RefusesAbsurdSizes) {
    EXPECT_EQ(saidOf([](Opening& o) { o.width = Length::feet(40); }), "");
    EXPECT_EQ(saidOf([](Opening& o) { o.width = Length::feet(400); }),
        "W4 has a width of 400' 0\", which is more than 40' 0\".");
    EXPECT_NE(saidOf([](Opening& o) { o.wallThickness = Length::feet(4); }), "");
}

TEST(CheckOpening, RefusesCountsOutOfRange) {
    EXPECT_EQ(saidOf([](Opening& o) { o.sidesCased = 3; }),
        "W4 has 3 for its sides cased; it must be 0 to 2.");
    EXPECT_NE(saidOf([](Opening& o) { o.sidesCased = -1; }), "");
    EXPECT_EQ(saidOf([](Opening& o) { o.sidesCased = 0; }), "");
    EXPECT_EQ(
        saidOf([](Opening& o) { o.count = 0; }), "W4 has 0 for its count; it must be 1 to 500.");
    EXPECT_NE(saidOf([](Opening& o) { o.mulls = -1; }), "");
    EXPECT_EQ(saidOf(
                  [](Opening& o) {
                      o.mulls = 2;
                      o.width = {};
                  },
                  Missing::allowed),
        "W4 has mulls but no width to part.");
}

TEST(CheckOpening, NamesAnUnmarkedOneByItsKind) {
    EXPECT_EQ(saidOf([](Opening& o) {
        o.mark.clear();
        o.width = {};
    }),
        "The window has no width.");
}

TEST(CheckOpening, RefusesAnArchThatIsNone) {
    const auto arch = [](Length rise) {
        return saidOf([&](Opening& o) {
            o.shape = Shape::arch;
            o.rise = rise;
        });
    };
    EXPECT_EQ(arch({}), "W4 has no rise.");
    EXPECT_EQ(arch(Length::inches(18)), ""); // a half circle
    EXPECT_EQ(arch(Length::inches(19)), "W4 is an arch that rises more than half its width.");
}

std::vector<PolygonSide> sides(std::initializer_list<std::pair<double, double>> list) {
    std::vector<PolygonSide> result;
    for (const auto& [inches, degrees] : list)
        result.push_back({Length::fromInches(inches),
            Angle::hundredths(static_cast<std::int64_t>(degrees * 100))});
    return result;
}

TEST(CheckPolygon, TakesShapesThatClose) {
    EXPECT_EQ(said(checkPolygon(sides({{60, 90}, {36, 90}, {60, 90}, {36, 90}}), "W4")), "");
    EXPECT_EQ(said(checkPolygon(sides({{36, 60}, {36, 60}, {36, 60}}), "W4")), "");
    EXPECT_EQ(
        said(checkPolygon(std::vector(8, PolygonSide{Length::feet(2), Angle::degrees(135)}), "W4")),
        "");
    // A trapezoid 60 and 40 high over 48: its top is hypot(48, 20) = 52 at 67.38 and 112.62 [calc].
    EXPECT_EQ(said(checkPolygon(sides({{60, 67.38}, {52, 112.62}, {40, 90}, {48, 90}}), "W4")), "");
}

TEST(CheckPolygon, RefusesAnglesThatDoNotAddUp) {
    EXPECT_EQ(said(checkPolygon(sides({{60, 90}, {36, 90}, {60, 90}, {36, 80}}), "W4")),
        "W4 has corners that add up to 350 degrees; 4 corners make 360.");
}

TEST(CheckPolygon, RefusesSidesThatDoNotMeet) {
    EXPECT_EQ(said(checkPolygon(sides({{60, 90}, {36, 90}, {58, 90}, {36, 90}}), "W4")),
        "W4 has sides that do not meet: they miss by 2\".");
    EXPECT_EQ(said(checkPolygon(sides({{60, 90}, {36, 90}, {59.9, 90}, {36, 90}}), "W4")), "");
}

TEST(CheckPolygon, RefusesTooFewSidesAndSidesOfNoLength) {
    EXPECT_EQ(
        said(checkPolygon(sides({{60, 90}, {36, 90}}), "W4")), "W4 needs at least three sides.");
    EXPECT_EQ(said(checkPolygon(sides({{60, 90}, {0, 90}, {60, 90}, {36, 90}}), "W4")),
        "W4 has a side without a length.");
}

TEST(CheckOpening, LooksAtItsPolygon) {
    const auto shaped = [](Opening& o) {
        o.shape = Shape::polygon;
        o.sides = sides({{36, 60}, {36, 60}, {30, 60}});
    };
    EXPECT_NE(saidOf(shaped), "");
    EXPECT_EQ(
        saidOf([](Opening& o) { o.shape = Shape::polygon; }), "W4 needs at least three sides.");
    EXPECT_EQ(saidOf([](Opening& o) { o.shape = Shape::polygon; }, Missing::allowed), "");
}

TEST(CheckMark, RefusesTheSameMarkTwiceInOnePlace) {
    PlanRows rows;
    rows.of<Opening>().put(window());
    Opening other = window();
    EXPECT_EQ(said(checkMark(other, rows)), "") << "it is the row itself";
    other.id = Id<Opening>(2);
    EXPECT_EQ(said(checkMark(other, rows)), "Another opening is marked W4 already.");
    other.variant = Id<Variant>(7);
    other.replaces = Id<Opening>(1);
    EXPECT_EQ(said(checkMark(other, rows)), "") << "an option changes the window";
    other = window();
    other.id = Id<Opening>(2);
    other.mark.clear();
    EXPECT_EQ(said(checkMark(other, rows)), "");
}

TEST(CheckOpeningWall, RefusesAWallTheRoomHasNot) {
    PlanRows rows;
    Room den;
    den.id = Id<Room>(5);
    den.name = "Den";
    den.walls.resize(4);
    rows.of<Room>().put(den);
    Opening row = window();
    row.room = den.id;
    row.wall = 4;
    EXPECT_EQ(said(checkOpeningWall(row, rows)), "");
    row.wall = 5;
    EXPECT_EQ(
        said(checkOpeningWall(row, rows)), "W4 is said to stand in wall 5 of Den, which has 4.");
    row.room = {};
    EXPECT_EQ(said(checkOpeningWall(row, rows)), "");
}

TEST(CheckRoom, LooksAtNameWallsAndBreaks) {
    Room den;
    EXPECT_EQ(said(checkRoom(den)), "The room has no name and no number.");
    EXPECT_EQ(said(checkRoom(den, Missing::allowed)), "");
    den.name = "Den";
    den.walls.resize(2);
    EXPECT_EQ(said(checkRoom(den)), "Den has a wall 1 without a length.");
    den.walls[0].length = den.walls[1].length = Length::feet(10);
    EXPECT_EQ(said(checkRoom(den)), "");
    den.walls[1].angle = Angle::degrees(180);
    EXPECT_EQ(said(checkRoom(den)),
        "Den has a corner after wall 2 that is not between 0 and 180 degrees.");
    den.walls[1].angle = Angle::degrees(135);
    den.baseBreak = Length::feet(21);
    EXPECT_EQ(said(checkRoom(den)), "Den has more wall without base than it has walls.");
    den.baseBreak = {};
    den.walls[0].length = Length::feet(301);
    EXPECT_EQ(said(checkRoom(den)), "Den has a wall 1 of 301' 0\", which is more than 300' 0\".");
}

TEST(CheckLevelVariantSwap, NeedWhatTheyStandFor) {
    EXPECT_EQ(said(checkLevel({})), "The level has no name.");
    Level level;
    level.name = "Main";
    EXPECT_EQ(said(checkLevel(level)), "");
    level.ceiling = {};
    EXPECT_EQ(said(checkLevel(level)), "Main has no ceiling.");
    EXPECT_EQ(said(checkVariant({})), "The option has no name.");
    Swap swap;
    EXPECT_EQ(said(checkSwap(swap)), "The swap needs a profile to take away and one to put there.");
    swap.from = swap.to = Id<Profile>(1);
    EXPECT_EQ(said(checkSwap(swap)), "The swap takes a profile in place of itself.");
    swap.to = Id<Profile>(2);
    EXPECT_EQ(said(checkSwap(swap)), "");
}

TEST(CheckFittings, LookAtSizesAndCounts) {
    Closet closet;
    closet.name = "Linen";
    EXPECT_EQ(said(checkCloset(closet)), "Linen has no shelf width.");
    closet.width = Length::feet(4);
    EXPECT_EQ(said(checkCloset(closet)), "");
    closet.kind = ClosetKind::shelves;
    closet.shelves = 0;
    EXPECT_EQ(said(checkCloset(closet)), "Linen has 0 for its shelves; it must be 1 to 50.");

    Stair stair;
    EXPECT_EQ(said(checkStair(stair)), "");
    stair.rail = RailStyle::overPost;
    EXPECT_EQ(said(checkStair(stair)), "The stair has no rail length.");
    stair.railLength = Length::feet(12);
    stair.newels = -1;
    EXPECT_EQ(said(checkStair(stair)), "The stair has -1 for its newels; it must be 0 to 500.");

    WallTreatment wall;
    wall.width = Length::feet(10);
    EXPECT_EQ(said(checkTreatment(wall)), "The wall treatment has no height.");
    wall.height = Length::feet(8);
    EXPECT_EQ(said(checkTreatment(wall)), "");
    wall.board = Id<Profile>(1);
    EXPECT_EQ(said(checkTreatment(wall)), "The wall treatment has no board spacing.");

    OtherWork other;
    other.name = "Mantel";
    EXPECT_EQ(said(checkOtherWork(other)), "");
    other.material = Money::dollars(-5);
    EXPECT_EQ(said(checkOtherWork(other)), "Mantel has a negative price for its material.");
}

} // namespace
} // namespace miterbook
