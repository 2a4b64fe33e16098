// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/cut/saw_kit.h"

#include <gmock/gmock.h>

using namespace miterbook;
using namespace miterbook::kit;
using testing::HasSubstr;

namespace {

Measure reading(Length widthTop, Length widthBottom, Length heightLeft, Length heightRight) {
    Measure measure;
    measure.opening = Id<Opening>(1);
    measure.widthTop = widthTop;
    measure.widthBottom = widthBottom;
    measure.heightLeft = heightLeft;
    measure.heightRight = heightRight;
    return measure;
}

std::vector<MeasureRemark> remarks(const Measure& measure) {
    return remarksOn(measure, window(in(36), in(60)), Bench(), in(3, 4), {});
}

} // namespace

TEST(MeasuredOpening, FrameIsCutForTheMiddleOfItsReadings) {
    const Measure measure = reading(in(36), in(36, 2), in(60), in(59, 14));
    const MeasuredOpening made = measuredOpening(window(in(36), in(60)), &measure);
    EXPECT_EQ(made.opening.width, in(36, 1));
    EXPECT_EQ(made.widthSlack, in(0, 1));
    EXPECT_EQ(made.opening.height, in(59, 15));
    EXPECT_TRUE(made.measured);
}

TEST(MeasuredOpening, DoorLegsStandEachAtItsOwnHeight) {
    SawHouse house;
    const Opening& opening = house.add(door(in(30)), "D1");
    Measure row = house.measure(opening, in(30, 2), in(80));
    row.widthBottom = in(30, 6); // the head is cut for the top
    row.heightRight = in(80, 5);
    house.put(row);
    for (const SawPiece& piece : house.pieces()) {
        if (piece.key.part == "head") {
            EXPECT_EQ(piece.shortPoint, in(30, 8));
        }
        if (piece.key.part == "left leg") {
            EXPECT_EQ(piece.shortPoint, in(80, 3));
        }
        if (piece.key.part == "right leg") {
            EXPECT_EQ(piece.shortPoint, in(80, 8));
        }
    }
}

TEST(MeasuredOpening, KeepsThePlansSizeWhereNothingWasRead) {
    const MeasuredOpening made = measuredOpening(window(in(36), in(60)), nullptr);
    EXPECT_EQ(made.opening.width, in(36));
    EXPECT_FALSE(made.measured);
    Measure half;
    half.widthMiddle = in(35);
    EXPECT_EQ(measuredOpening(window(in(36), in(60)), &half).opening.height, in(60));
    EXPECT_FALSE(measuredOpening(window(in(36), in(60)), &half).measured);
}

TEST(MeasuredOpening, EachOfSeveralAlikeIsItsOwn) {
    SawHouse house;
    Opening& opening = house.add(window(in(36), in(60)), "W1");
    opening.count = 3;
    Measure row = house.measure(opening, in(37), in(60));
    row.unit = 2;
    house.put(row);
    std::map<std::string, Length> heads;
    for (const SawPiece& piece : house.pieces()) {
        if (piece.key.part == "head")
            heads[piece.source.name] = piece.shortPoint;
    }
    EXPECT_EQ(heads.size(), 3U);
    EXPECT_EQ(heads["W1.1"], in(36, 6));
    EXPECT_EQ(heads["W1.2"], in(37, 6));
}

TEST(MeasureRemarks, AreNoneForASoundOpening) {
    EXPECT_TRUE(remarks(reading(in(36), in(36), in(60), in(60))).empty());
    EXPECT_TRUE(remarks(Measure()).empty());
}

TEST(MeasureRemarks, SayWhatOutOfSquareDoes) {
    Measure measure = reading(in(36), in(36), in(60), in(60));
    measure.diagonalUp = in(70, 1);
    measure.diagonalDown = in(69, 15);
    auto said = remarks(measure);
    ASSERT_EQ(said.size(), 1U);
    EXPECT_EQ(said[0].weight, MeasureRemark::Weight::ask);
    // 36 x 60, 1/8 in the diagonals: about 1/8 of run-out, about .01 in at the miter [calc].
    EXPECT_THAT(said[0].sentence, HasSubstr("runs out 1/8\""));
    EXPECT_THAT(said[0].sentence, HasSubstr("open by 0.009\""));
    EXPECT_THAT(said[0].sentence, HasSubstr("fit the frame to the opening"));
    measure.diagonalUp = in(70, 4);
    said = remarks(measure);
    ASSERT_EQ(said.size(), 1U);
    EXPECT_EQ(said[0].weight, MeasureRemark::Weight::stop);
}

TEST(MeasureRemarks, SayBowsJambsAndSizesFarFromThePlan) {
    Measure measure = reading(in(36), in(36), in(60), in(60));
    measure.widthMiddle = in(36, 3);
    measure.proud = -in(0, 2);
    auto said = remarks(measure);
    ASSERT_EQ(said.size(), 3U); // bowed, unequal readings, shy
    EXPECT_THAT(said[0].sentence, HasSubstr("bows out 3/16\""));
    EXPECT_THAT(said[2].sentence, HasSubstr("1/8\" shy"));
    said = remarks(reading(in(37), in(37), in(60), in(60)));
    ASSERT_EQ(said.size(), 1U);
    EXPECT_THAT(said[0].sentence, HasSubstr("37\" is 1\" over the plan's 36\""));
}
