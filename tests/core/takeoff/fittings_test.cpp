// SPDX-License-Identifier: GPL-3.0-or-later
#include "trim_kit.h"

namespace miterbook {
namespace {

using namespace kit;
using testing::ElementsAre;
using testing::IsEmpty;

template <class Row>
Takeoff takeRow(std::vector<Row> WholePlan::*list, Row row) {
    WholePlan whole = emptyPlan();
    row.id = Id<Row>(1);
    row.level = Id<Level>(1);
    (whole.*list).push_back(row);
    return takeOff(whole, littleBook(), 0);
}

Closet closet(ClosetKind kind, Length width) {
    Closet row;
    row.name = "Linen";
    row.kind = kind;
    row.width = width;
    row.shelf = profiles.shelf;
    row.rod = profiles.board;
    row.cleat = profiles.jamb;
    return row;
}

TEST(Closet, ShelfAndRodHasOneOfEachAndThreeCleats) {
    const Takeoff takeoff = takeRow(&WholePlan::closets, closet(ClosetKind::shelfAndRod, ft(6)));
    EXPECT_EQ(piece(takeoff, "shelf").longPoint, ft(6));
    EXPECT_EQ(piece(takeoff, "rod").count, 1);
    EXPECT_EQ(piece(takeoff, "back cleat").longPoint, ft(6));
    EXPECT_EQ(piece(takeoff, "end cleat").longPoint, in(12));
    EXPECT_EQ(piece(takeoff, "end cleat").count, 2);
    EXPECT_EQ(amount(takeoff, Task::shelfAndRod), 6000);
    // Spans of at most 40 in over 72: one support between (trade.md section 6: 32 to 48 in) [cp].
    EXPECT_EQ(parts(takeoff, PartUse::closetRodBracket), 1);
    EXPECT_EQ(parts(takeoff, PartUse::shelfBracket), 0);
}

TEST(Closet, DoubleRodHasTwoOfEach) {
    Closet row = closet(ClosetKind::doubleRod, ft(6));
    row.count = 2;
    const Takeoff takeoff = takeRow(&WholePlan::closets, row);
    EXPECT_EQ(piece(takeoff, "shelf").count, 4);
    EXPECT_EQ(piece(takeoff, "rod").count, 4);
    EXPECT_EQ(amount(takeoff, Task::shelfAndRod), 24000);
    EXPECT_EQ(parts(takeoff, PartUse::closetRodBracket), 4);
}

TEST(Closet, ShelvesAreCountedEach) {
    Closet row = closet(ClosetKind::shelves, in(40));
    row.shelves = 5;
    const Takeoff takeoff = takeRow(&WholePlan::closets, row);
    EXPECT_EQ(piece(takeoff, "shelf").count, 5);
    EXPECT_TRUE(pieces(takeoff, "rod").empty());
    EXPECT_EQ(piece(takeoff, "end cleat").count, 10);
    EXPECT_EQ(amount(takeoff, Task::closetShelf), 5000);
    EXPECT_EQ(parts(takeoff, PartUse::shelfBracket), 0); // 40 in spans without
    row.width = in(41);
    EXPECT_EQ(parts(takeRow(&WholePlan::closets, row), PartUse::shelfBracket), 5);
}

TEST(Closet, WithoutProfilesCountsLabourAlone) {
    Closet row = closet(ClosetKind::shelfAndRod, ft(6));
    row.shelf = row.rod = row.cleat = {};
    const Takeoff takeoff = takeRow(&WholePlan::closets, row);
    EXPECT_THAT(takeoff.pieces, IsEmpty());
    EXPECT_THAT(takeoff.remarks, IsEmpty());
    EXPECT_EQ(amount(takeoff, Task::shelfAndRod), 6000);
}

TEST(Closet, WithoutAWidthIsAProblem) {
    EXPECT_THAT(problems(takeRow(&WholePlan::closets, closet(ClosetKind::shelves, {}))),
        ElementsAre("Linen has no shelf width; its shelving is not counted."));
}

Stair stair() {
    Stair row;
    row.name = "Main stair";
    row.closedSkirts = 1;
    row.openSkirts = 1;
    row.skirtLength = ft(15);
    row.skirt = profiles.board;
    return row;
}

TEST(Stair, CountsItsSkirts) {
    const Takeoff takeoff = takeRow(&WholePlan::stairs, stair());
    EXPECT_EQ(piece(takeoff, "skirt").count, 2);
    EXPECT_EQ(piece(takeoff, "skirt").longPoint, ft(15));
    EXPECT_EQ(amount(takeoff, Task::closedSkirt), 1000);
    EXPECT_EQ(amount(takeoff, Task::openSkirt), 1000);
    EXPECT_EQ(amount(takeoff, Task::treadsAndRisers), 0);
    EXPECT_EQ(takeoff.tasks.size(), 2U);
}

TEST(Stair, FlightsAreOfFourteenRisers) {
    Stair row = stair();
    row.treadsAndRisers = true;
    row.risers = 14;
    EXPECT_EQ(amount(takeRow(&WholePlan::stairs, row), Task::treadsAndRisers), 1000);
    EXPECT_EQ(parts(takeRow(&WholePlan::stairs, row), PartUse::treadKit), 14);
    row.risers = 10;
    EXPECT_EQ(amount(takeRow(&WholePlan::stairs, row), Task::treadsAndRisers), 714);
}

TEST(Stair, RailBringsItsHandrail) {
    Stair row = stair();
    row.rail = RailStyle::overPost;
    row.railLength = ft(20);
    row.handrail = profiles.board;
    const Takeoff takeoff = takeRow(&WholePlan::stairs, row);
    EXPECT_EQ(amount(takeoff, Task::railOverPost), 20000);
    EXPECT_EQ(pieces(takeoff, "handrail").size(), 2U); // 20 ft out of 16 ft sticks
    EXPECT_THAT(warnings(takeoff), ElementsAre(testing::HasSubstr("handrail of 240\"")));
    row.rail = RailStyle::postToPost;
    EXPECT_EQ(amount(takeRow(&WholePlan::stairs, row), Task::railPostToPost), 20000);
    row.railLength = {};
    EXPECT_THAT(problems(takeRow(&WholePlan::stairs, row)),
        ElementsAre("Main stair has a rail without a length."));
}

// trade.md section 6: clear run 72, baluster 1 1/4, gap 4 -> 13 [calc].
TEST(Stair, BalustersAreComputedFromTheRunUnlessCounted) {
    Stair row = stair();
    row.newels = 2;
    row.balusterRun = ft(6);
    EXPECT_EQ(parts(takeRow(&WholePlan::stairs, row), PartUse::baluster), 13);
    EXPECT_EQ(amount(takeRow(&WholePlan::stairs, row), Task::baluster), 13000);
    EXPECT_EQ(parts(takeRow(&WholePlan::stairs, row), PartUse::newel), 2);
    row.balusters = 20;
    EXPECT_EQ(parts(takeRow(&WholePlan::stairs, row), PartUse::baluster), 20);
}

WallTreatment wall(TreatmentKind kind) {
    WallTreatment row;
    row.name = "Accent wall";
    row.kind = kind;
    row.width = ft(12);
    row.height = ft(8);
    row.board = profiles.board;
    row.spacing = in(7);
    return row;
}

TEST(WallTreatment, ShiplapRunsInCourses) {
    const Takeoff takeoff = takeRow(&WholePlan::treatments, wall(TreatmentKind::shiplap));
    EXPECT_EQ(amount(takeoff, Task::shiplap), 96000);
    EXPECT_EQ(piece(takeoff, "course").count, 14); // 96 / 7, rounded up
    EXPECT_EQ(piece(takeoff, "course").longPoint, ft(12));
}

TEST(WallTreatment, BattensStandAtBothEndsToo) {
    WallTreatment row = wall(TreatmentKind::boardAndBatten);
    row.spacing = in(16);
    row.cap = profiles.base;
    const Takeoff takeoff = takeRow(&WholePlan::treatments, row);
    EXPECT_EQ(piece(takeoff, "batten").count, 10); // 144 / 16 + 1
    EXPECT_EQ(piece(takeoff, "batten").longPoint, ft(8));
    EXPECT_EQ(piece(takeoff, "cap").longPoint, ft(12));
    EXPECT_EQ(amount(takeoff, Task::chairRail), 12000);
    EXPECT_EQ(amount(takeoff, Task::boardAndBatten), 96000);
}

TEST(WallTreatment, WainscotHasTwoRails) {
    WallTreatment row = wall(TreatmentKind::wainscot);
    row.spacing = in(24);
    const Takeoff takeoff = takeRow(&WholePlan::treatments, row);
    EXPECT_EQ(piece(takeoff, "stile").count, 7);
    EXPECT_EQ(piece(takeoff, "rail").count, 2);
    EXPECT_EQ(amount(takeoff, Task::wainscot), 96000);
}

TEST(WallTreatment, WhatIsMissingIsSaid) {
    WallTreatment row = wall(TreatmentKind::shiplap);
    row.spacing = {};
    EXPECT_THAT(problems(takeRow(&WholePlan::treatments, row)),
        ElementsAre("Accent wall has no board spacing; its boards are not counted."));
    EXPECT_EQ(amount(takeRow(&WholePlan::treatments, row), Task::shiplap), 96000);
    row.height = {};
    EXPECT_THAT(problems(takeRow(&WholePlan::treatments, row)),
        ElementsAre("Accent wall has no size; it is not counted."));
}

TEST(OtherWork, CountsLabourMaterialAndGoods) {
    OtherWork row;
    row.name = "Mantel";
    row.task = Task::mantel;
    row.quantity = Quantity::count(2);
    row.profile = profiles.board;
    row.length = ft(6);
    row.material = Money::dollars(350);
    const Takeoff takeoff = takeRow(&WholePlan::others, row);
    EXPECT_EQ(amount(takeoff, Task::mantel), 2000);
    EXPECT_EQ(piece(takeoff, "material").longPoint, ft(6));
    EXPECT_EQ(piece(takeoff, "material").work, PieceOfWork::builtIns);
    ASSERT_EQ(takeoff.goods.size(), 1U);
    EXPECT_EQ(takeoff.goods[0].cost, Money::dollars(350));
    EXPECT_EQ(takeoff.goods[0].source.name, "Mantel");
    EXPECT_EQ(takeoff.goods[0].work, PieceOfWork::builtIns);
}

} // namespace
} // namespace miterbook
