// SPDX-License-Identifier: GPL-3.0-or-later
#include "job/figure_changes.h"

#include "job/figures.h"
#include "job/saw_spot_edit.h"
#include "support/small_book.h"

#include <gtest/gtest.h>

using namespace miterbook;

namespace {

const Id<Plan> aspenSeen(31);

template <class Row>
std::vector<Change> addedRow(Row row) {
    return {{std::nullopt, AnyRow(std::move(row))}};
}

JobFigures seenFiguresOf(const Book& book) {
    return figuresFor(book, aspenSeen, {}, Effort::quick);
}

CutPiece tickedPiece(std::int64_t id) {
    CutPiece piece;
    piece.id = Id<CutPiece>(id);
    piece.plan = aspenSeen;
    piece.state = PieceState::cut;
    return piece;
}

} // namespace

TEST(FigureChanges, AreNoneWhereSomethingIsTicked) {
    const std::vector<Change> ticks{
        {std::nullopt, AnyRow(tickedPiece(900))}, {AnyRow(tickedPiece(901)), std::nullopt}};
    EXPECT_FALSE(alterFigures(ticks));
    EXPECT_FALSE(alterFigures({}));
    EXPECT_FALSE(alterFigures(addedRow(Measure())));
    EXPECT_FALSE(alterFigures(addedRow(SawTest())));
    EXPECT_FALSE(alterFigures(addedRow(SawSpot())));
}

TEST(FigureChanges, AreThereWherePlanOrPricesChange) {
    EXPECT_TRUE(alterFigures(addedRow(Opening())));
    EXPECT_TRUE(alterFigures(addedRow(Stick())));
    EXPECT_TRUE(alterFigures(addedRow(Offcut())));
    EXPECT_TRUE(alterFigures(addedRow(RackMove()))) << "the rack that the job sees is another";
    std::vector<Change> both = addedRow(tickedPiece(900));
    both.push_back({AnyRow(Room()), std::nullopt});
    EXPECT_TRUE(alterFigures(both)) << "one change of many is enough";
}

TEST(FigureChanges, WhatDoesNotAlterThemLeavesThemAsTheyAre) {
    Book book = smallBook();
    const JobFigures before = seenFiguresOf(book);
    Measure measure;
    measure.id = Id<Measure>(90);
    measure.plan = aspenSeen;
    measure.opening = Id<Opening>(43);
    measure.widthTop = measure.widthBottom = Length::inches(41);
    SawTest test;
    test.id = Id<SawTest>(91);
    test.plan = aspenSeen;
    test.set = test.measured = Length::inches(36);
    Bench bench;
    bench.id = Id<Bench>(1);
    bench.paintTolerance = Length::sixteenths(5);
    for (const std::vector<Change>& changes :
        {addedRow(measure), addedRow(test), addedRow(tickedPiece(92)), addedRow(bench),
            addedRow(SawSpot{Id<SawSpot>(93), aspenSeen, 41, {}, {}})}) {
        ASSERT_FALSE(alterFigures(changes));
        apply(book, {"a gesture at the saw", changes});
    }
    EXPECT_EQ(seenFiguresOf(book), before);
}

TEST(SawSpot, StandsOncePerLevelOfAHouse) {
    Book book = smallBook();
    IdSource ids(5000);
    const Id<Level> level(41);
    const Spot corner{Length::feet(3), -Length::feet(2)};
    EXPECT_FALSE(sawSpotEdit(book, ids, aspenSeen, level, corner))
        << "nobody cuts for a builder's plan";
    Plan plan = *book.plan(aspenSeen);
    plan.house = Id<House>(77);
    book.jobs.of<Plan>().put(plan);
    const auto first = sawSpotEdit(book, ids, aspenSeen, level, corner);
    ASSERT_TRUE(first);
    EXPECT_EQ(first->sentence, "Put the saw up");
    apply(book, *first);
    const auto second = sawSpotEdit(
        book, ids, aspenSeen, level, {Length::feet(9), Length::feet(9)});
    EXPECT_EQ(second->sentence, "Move the saw");
    apply(book, *second);
    EXPECT_EQ(book.sheet(aspenSeen).of<SawSpot>().size(), 1U);
    EXPECT_EQ(sawSpotOn(book, aspenSeen, level)->x, Length::feet(9));
    EXPECT_EQ(sawSpotOn(book, aspenSeen, Id<Level>(40)), nullptr);
    apply(book, inverse(*second));
    EXPECT_EQ(sawSpotOn(book, aspenSeen, level)->y, -Length::feet(2));
    apply(book, noSawSpotEdit(book, aspenSeen, level));
    EXPECT_EQ(sawSpotOn(book, aspenSeen, level), nullptr);
    EXPECT_TRUE(noSawSpotEdit(book, aspenSeen, level).empty());
}
