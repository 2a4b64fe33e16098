// SPDX-License-Identifier: GPL-3.0-or-later
#include "cut/cut_checks.h"

#include <gtest/gtest.h>

using namespace miterbook;

namespace {

Measure soundMeasure() {
    Measure measure;
    measure.opening = Id<Opening>(5);
    measure.widthTop = Length::inches(36);
    return measure;
}

} // namespace

TEST(CutChecks, TakeStarterSettings) {
    EXPECT_TRUE(checkBench(Bench()).ok());
}

TEST(CutChecks, RefuseSettingsThatMakeNoSense) {
    const auto refused = [](auto change) {
        Bench bench;
        change(bench);
        return !checkBench(bench).ok();
    };
    EXPECT_TRUE(refused([](Bench& b) { b.paintTolerance = -Length::sixteenths(1); }));
    EXPECT_TRUE(refused([](Bench& b) { b.firstClamps = 0; }));
    EXPECT_TRUE(refused([](Bench& b) { b.secondMakeUp = MinutesPerUnit(); }));
    EXPECT_TRUE(refused([](Bench& b) { b.labelColumns = 0; }));
    EXPECT_TRUE(refused([](Bench& b) { b.houseHumidity = Percent::whole(101); }));
    EXPECT_TRUE(refused([](Bench& b) { b.firstCost = UnitPrice::cents(-1); }));
    EXPECT_FALSE(refused([](Bench& b) { b.firstDwell = MinutesPerUnit(); }));
}

TEST(CutChecks, RefuseReadingsNoOpeningHas) {
    EXPECT_TRUE(checkMeasure(soundMeasure()).ok());
    Measure measure = soundMeasure();
    measure.heightLeft = Length::feet(41);
    EXPECT_FALSE(checkMeasure(measure).ok());
    measure = soundMeasure();
    measure.opening = {};
    EXPECT_FALSE(checkMeasure(measure).ok());
    measure = soundMeasure();
    measure.proud = Length::inches(13);
    EXPECT_FALSE(checkMeasure(measure).ok());
    measure = soundMeasure();
    measure.unit = 0;
    EXPECT_FALSE(checkMeasure(measure).ok());
}

TEST(CutChecks, RefusePiecesAndTestsThatCannotBe) {
    CutPiece piece;
    EXPECT_TRUE(checkCutPiece(piece).ok());
    piece.shortPoint = Length::inches(2);
    EXPECT_FALSE(checkCutPiece(piece).ok());
    RackMove move;
    move.stick = 3;
    EXPECT_FALSE(checkRackMove(move).ok()) << "an offcut has a length";
    move.length = Length::inches(30);
    EXPECT_TRUE(checkRackMove(move).ok());
    move.stick = 0;
    EXPECT_FALSE(checkRackMove(move).ok());
    SawTest test;
    test.set = Length::inches(36);
    test.measured = Length::inches(39);
    EXPECT_FALSE(checkSawTest(test).ok());
    test.measured = Length::inches(36) + Length::sixteenths(1);
    EXPECT_TRUE(checkSawTest(test).ok());
    test.corner = Angle::degrees(30);
    EXPECT_FALSE(checkSawTest(test).ok());
}

TEST(CutChecks, RefuseASawOutOfItsHouse) {
    SawSpot spot;
    EXPECT_FALSE(checkSawSpot(spot).ok()) << "it stands on no level";
    spot.level = 41;
    spot.x = -Length::feet(20); // left of where drawing began
    EXPECT_TRUE(checkSawSpot(spot).ok());
    spot.y = Length::feet(301);
    EXPECT_FALSE(checkSawSpot(spot).ok());
}
