// SPDX-License-Identifier: GPL-3.0-or-later
#include "trim_kit.h"

namespace miterbook {
namespace {

using namespace kit;

const PieceEnd square{};
const PieceEnd miter45{EndCut::miter, 45, 0};

void expectPoints(const Piece& piece, Length shortPoint, Length longPoint) {
    EXPECT_EQ(piece.shortPoint.toInches(), shortPoint.toInches()) << piece.part;
    EXPECT_EQ(piece.longPoint.toInches(), longPoint.toInches()) << piece.part;
}

// trade.md section 1, 36 x 60, r 3/16, c 3 1/4 [calc].
TEST(PictureFrame, HasFourMiteredSides) {
    const Takeoff takeoff = takeOne(window(in(36), in(60)));
    ASSERT_EQ(takeoff.pieces.size(), 4U);
    expectPoints(piece(takeoff, "head"), in(36, 6), in(42, 14));
    expectPoints(piece(takeoff, "sill"), in(36, 6), in(42, 14));
    expectPoints(piece(takeoff, "left leg"), in(60, 6), in(66, 14));
    expectPoints(piece(takeoff, "right leg"), in(60, 6), in(66, 14));
    EXPECT_EQ(runningLength(takeoff, profiles.casing), in(219, 8));
    for (const Piece& each : takeoff.pieces) {
        EXPECT_EQ(each.left, miter45);
        EXPECT_EQ(each.right, miter45);
        EXPECT_EQ(each.count, 1);
        EXPECT_EQ(each.work, PieceOfWork::windows);
        EXPECT_EQ(each.source.name, "W1");
        EXPECT_EQ(each.source.row, Origins(Id<Opening>(1)));
    }
}

// trade.md section 1: 6/8 leg with r 3/16: 80 3/16 short point [calc].
TEST(Door, HasLegsSquareAtTheFloorOnBothFaces) {
    const Takeoff takeoff = takeOne(door(ft(2, 8)));
    ASSERT_EQ(takeoff.pieces.size(), 3U);
    const Piece left = piece(takeoff, "left leg");
    expectPoints(left, in(80, 3), in(83, 7));
    EXPECT_EQ(left.left, square);
    EXPECT_EQ(left.right, miter45);
    EXPECT_EQ(left.count, 2);
    EXPECT_EQ(left.work, PieceOfWork::doors);
    const Piece right = piece(takeoff, "right leg");
    expectPoints(right, in(80, 3), in(83, 7));
    EXPECT_EQ(right.left, miter45);
    EXPECT_EQ(right.right, square);
    expectPoints(piece(takeoff, "head"), in(32, 6), in(38, 14));
}

// trade.md section 6: casing per door side is about 17 LF, 34 both sides [cp]; one 2-8 x 6-8 frame,
// both sides, 1x5 casing: 34.5 ft [pub: ICS Building Trades Pocketbook].
TEST(Door, TakesAboutThirtyFourFeetBothSides) {
    const Takeoff takeoff = takeOne(door(ft(2, 8)));
    EXPECT_NEAR(runningLength(takeoff, profiles.casing).toFeet(), 34.3, 0.05);
}

TEST(Door, StaysOffTheFloorByTheShopsGap) {
    PriceBook book = littleBook();
    Practice practice = book.practice();
    practice.floorGap = in(0, 2);
    book.of<Practice>().put(practice);
    expectPoints(piece(takeOne(door(ft(2, 8)), book), "left leg"), in(80, 1), in(83, 5));
}

// trade.md section 1: 81 + 3/16 + 3 1/4 = 84 7/16 [calc].
TEST(Door, FromTheSubfloorHasLegsLongerByTheFlooring) {
    Opening opening = door(ft(2, 8));
    opening.fromSubfloor = true;
    opening.flooring = in(1);
    expectPoints(piece(takeOne(opening), "left leg"), in(81, 3), in(84, 7));
}

TEST(Door, WithTheStyleOfAFrameIsStillThreeSided) {
    Opening opening = door(ft(2, 8));
    opening.style = TrimStyle::pictureFrame;
    EXPECT_TRUE(pieces(takeOne(opening), "sill").empty());
    EXPECT_EQ(takeOne(opening).pieces.size(), 3U);
}

TEST(SidesCased, MultiplyPiecesAndNothingIsCutForNone) {
    Opening opening = door(ft(2, 8));
    opening.count = 3;
    EXPECT_EQ(piece(takeOne(opening), "head").count, 6);
    opening.sidesCased = 1;
    EXPECT_EQ(piece(takeOne(opening), "head").count, 3);
    opening.sidesCased = 0;
    EXPECT_TRUE(takeOne(opening).pieces.empty());
}

TEST(Reveal, OfTheOpeningGoesBeforeTheShops) {
    Opening opening = window(in(36), in(60));
    opening.reveal = in(0, 4); // 1/4 also common [cp]
    expectPoints(piece(takeOne(opening), "head"), in(36, 8), in(43));
}

// trade.md section 1: legs h + r, apron w + 2r + 2c, stool apron + 2 horns of 3/4 [cp].
TEST(StoolAndApron, HasLegsOnTheStoolAndReturnsOnBoth) {
    const Takeoff takeoff = takeOne(window(in(36), in(60), TrimStyle::stoolAndApron));
    expectPoints(piece(takeoff, "left leg"), in(60, 3), in(63, 7));
    EXPECT_EQ(piece(takeoff, "left leg").left, square);
    expectPoints(piece(takeoff, "head"), in(36, 6), in(42, 14));
    EXPECT_TRUE(pieces(takeoff, "sill").empty());
    const Piece apron = piece(takeoff, "apron");
    expectPoints(apron, in(42, 14) - in(1, 6), in(42, 14)); // the return is as deep as 11/16 stock
    EXPECT_EQ(apron.profile, profiles.casing);
    const Piece stool = piece(takeoff, "stool");
    expectPoints(stool, in(42, 14), in(44, 6));
    EXPECT_EQ(stool.profile, profiles.stool);
    EXPECT_EQ(piece(takeoff, "apron return").count, 2);
    EXPECT_EQ(piece(takeoff, "apron return").longPoint, in(0, 8));
    EXPECT_EQ(piece(takeoff, "stool return").profile, profiles.stool);
}

TEST(StoolAndApron, WithoutAStoolProfileIsAProblem) {
    WholePlan whole = emptyPlan();
    whole.plan.stool = {};
    whole.openings.push_back(window(in(36), in(60), TrimStyle::stoolAndApron));
    const Takeoff takeoff = takeOff(whole, littleBook(), 0);
    EXPECT_THAT(problems(takeoff),
        testing::ElementsAre("W1 has no profile for its stool; that is not counted."));
    EXPECT_EQ(pieces(takeoff, "apron").size(), 1U);
}

TEST(ThreeSided, WindowHasNoSill) {
    const Takeoff takeoff = takeOne(window(in(36), in(60), TrimStyle::threeSided));
    ASSERT_EQ(takeoff.pieces.size(), 3U);
    expectPoints(piece(takeoff, "right leg"), in(60, 3), in(63, 7));
}

// trade.md section 1: legs h + r square, head w + 2r + 2c + 2 overhangs (1/2 in each).
TEST(ButtedHead, SitsOnSquareLegs) {
    Opening opening = door(ft(2, 8));
    opening.style = TrimStyle::buttedHead;
    opening.cap = profiles.board;
    const Takeoff takeoff = takeOne(opening);
    ASSERT_EQ(takeoff.pieces.size(), 4U);
    const Piece leg = piece(takeoff, "left leg");
    expectPoints(leg, in(80, 3), in(80, 3));
    EXPECT_EQ(leg.right, square);
    expectPoints(piece(takeoff, "head"), in(39, 14), in(39, 14));
    const Piece cap = piece(takeoff, "head cap");
    EXPECT_EQ(cap.profile, profiles.board);
    EXPECT_EQ(cap.longPoint, in(39, 14));
    EXPECT_EQ(cap.count, 2);
}

TEST(ButtedHead, WindowStandsOnAStoolOnlyWhereOneIsNamed) {
    Opening opening = window(in(36), in(60), TrimStyle::buttedHead);
    EXPECT_TRUE(pieces(takeOne(opening), "stool").empty());
    opening.stool = profiles.stool;
    EXPECT_EQ(piece(takeOne(opening), "stool").longPoint, in(44, 6));
}

TEST(DrywallReturn, HasAStoolWhereThePlanHasOneAndNoCasing) {
    const Opening opening = window(in(36), in(60), TrimStyle::drywallReturn);
    const Takeoff takeoff = takeOne(opening);
    EXPECT_EQ(piece(takeoff, "stool").longPoint, in(37, 8)); // w + 2 horns
    EXPECT_EQ(runningLength(takeoff, profiles.casing), Length());
    EXPECT_EQ(amount(takeoff, Task::drywallReturnStool), 1000);
}

TEST(DrywallReturn, WithoutStoolTakesNothing) {
    WholePlan whole = emptyPlan();
    whole.plan.stool = {};
    whole.openings.push_back(window(in(36), in(60), TrimStyle::drywallReturn));
    const Takeoff takeoff = takeOff(whole, littleBook(), 0);
    EXPECT_TRUE(takeoff.pieces.empty());
    EXPECT_TRUE(takeoff.tasks.empty());
    EXPECT_TRUE(takeoff.remarks.empty());
}

TEST(DrywallReturn, GetsAnApronOfItsOwnCasing) {
    Opening opening = window(in(36), in(60), TrimStyle::drywallReturn);
    opening.casing = profiles.casing;
    EXPECT_EQ(piece(takeOne(opening), "apron").longPoint, in(36));
}

TEST(Mulls, AreSquarePiecesBetweenHeadAndSill) {
    Opening opening = window(ft(9), in(60));
    opening.mulls = 2;
    opening.mullCasing = profiles.board;
    const Takeoff takeoff = takeOne(opening);
    const Piece mull = piece(takeoff, "mull casing");
    expectPoints(mull, in(60, 6), in(60, 6));
    EXPECT_EQ(mull.left, square);
    EXPECT_EQ(mull.count, 2);
    EXPECT_EQ(mull.profile, profiles.board);
    EXPECT_EQ(amount(takeoff, Task::mullCasing), 2000);
    opening.style = TrimStyle::stoolAndApron;
    opening.mullCasing = {};
    EXPECT_EQ(piece(takeOne(opening), "mull casing").longPoint, in(60, 3));
    EXPECT_EQ(piece(takeOne(opening), "mull casing").profile, profiles.casing);
}

} // namespace
} // namespace miterbook
