// SPDX-License-Identifier: GPL-3.0-or-later
#include "job/cut_figures.h"

#include "support/small_book.h"

#include <gtest/gtest.h>

using namespace miterbook;

namespace {

const Id<Plan> aspen(31);

CutFigures figuresOf(const Book& book) {
    return cutFiguresFor(book, figuresFor(book, aspen, {}, Effort::quick));
}

Measure measureOfW1() {
    Measure measure;
    measure.id = Id<Measure>(90);
    measure.plan = aspen;
    measure.opening = Id<Opening>(43);
    measure.widthTop = measure.widthBottom = Length::inches(37);
    measure.heightLeft = measure.heightRight = Length::inches(60);
    return measure;
}

} // namespace

TEST(CutFigures, CutForWhatWasMeasured) {
    Book book = smallBook();
    const CutFigures before = figuresOf(book);
    ASSERT_EQ(before.units.size(), 2U);
    ASSERT_EQ(before.sheet.pieces.size(), 8U);
    EXPECT_EQ(before.sheet.stops.size(), 2U);
    EXPECT_TRUE(before.sheet.problems.empty());
    book.sheets[aspen].of<Measure>().put(measureOfW1());
    const CutFigures after = figuresOf(book);
    EXPECT_EQ(after.sheet.stops.size(), 3U);
    EXPECT_EQ(after.units.front().measure.widthTop, Length::inches(37));
}

TEST(CutFigures, CarryTheMeanOfTheTestCuts) {
    Book book = smallBook();
    for (int i = 0; i < 2; ++i) {
        SawTest test;
        test.id = Id<SawTest>(80 + i);
        test.plan = aspen;
        test.set = Length::inches(36);
        test.measured = Length::inches(36) - Length::thirtySeconds(1 + 2 * i);
        test.corner = Angle::hundredths(8990 - 20 * i);
        book.sheets[aspen].of<SawTest>().put(test);
    }
    const CutFigures figures = figuresOf(book);
    EXPECT_EQ(figures.correction.add, Length::thirtySeconds(2));
    ASSERT_TRUE(figures.corner);
    EXPECT_NEAR(*figures.corner, 89.8, 1e-9);
}

TEST(CutFigures, SayWhatBatchingSaved) {
    Book book = smallBook();
    Bench bench;
    bench.stopMove = MinutesPerUnit::whole(1);
    bench.tapePull = MinutesPerUnit::hundredths(50);
    book.sheets[aspen].of<Measure>().put(measureOfW1());
    const CutFigures figures = figuresOf(book);
    const BatchSavings saved = savingsOn(figures, bench, {});
    EXPECT_EQ(saved.byPiece.stopMoves, 8);
    EXPECT_EQ(saved.byBatch.stopMoves, 3);
    EXPECT_EQ(saved.byBatch.tapePulls, 3 + 4 + 2); // stops, W1 as read, W2 not read yet
    EXPECT_DOUBLE_EQ(saved.minutesSaved(), 5 * 1 + (16 - 9) * 0.5);
    EXPECT_EQ(savingsOn(figures, bench, Id<Level>(4711)).byPiece.stopMoves, 0);
}

TEST(Bench, HasStarterValuesUntilItIsSet) {
    Book book;
    EXPECT_EQ(book.bench().paintTolerance, Length::sixteenths(1));
    Bench own;
    own.id = Id<Bench>(1);
    own.firstClamps = 3;
    book.jobs.of<Bench>().put(own);
    EXPECT_EQ(book.bench().firstClamps, 3);
}
