// SPDX-License-Identifier: GPL-3.0-or-later
#include "book/price_book.h"

#include <gtest/gtest.h>

namespace miterbook {
namespace {

constexpr Id<Profile> casing(7);

Stick stick(int id, int feet, bool stocked = true) {
    return {Id<Stick>(id), casing, Length::feet(feet), Money::dollars(feet), stocked, Origin::shop};
}

TEST(PriceBook, AnEmptyBookHasDefaults) {
    const PriceBook book;
    EXPECT_EQ(book.practice().reveal, Length::sixteenths(3));
    EXPECT_EQ(book.terms().hoursPerYear, 2000);
    EXPECT_EQ(book.shop().currency, "$");
    EXPECT_EQ(book.profileName(casing), "no profile");
    EXPECT_EQ(book.rate(Task::base), nullptr);
    EXPECT_EQ(book.part(PartUse::newel), nullptr);
    EXPECT_EQ(book.piecePrice(Task::base), nullptr);
    EXPECT_DOUBLE_EQ(book.factor({}), 1.0);
}

TEST(PriceBook, SticksAreThoseTheYardStocksShortestFirst) {
    PriceBook book;
    book.of<Stick>().put(stick(1, 16));
    book.of<Stick>().put(stick(2, 8));
    book.of<Stick>().put(stick(3, 20, false));
    Stick other = stick(4, 12);
    other.profile = Id<Profile>(8);
    book.of<Stick>().put(other);
    const std::vector<Stick> sticks = book.stockedSticks(casing);
    ASSERT_EQ(sticks.size(), 2U);
    EXPECT_EQ(sticks[0].length, Length::feet(8));
    EXPECT_EQ(sticks[1].length, Length::feet(16));
}

TEST(PriceBook, FactorsMultiply) {
    PriceBook book;
    book.of<Factor>().put(
        {Id<Factor>(1), Condition::stainGrade, Percent::whole(130), Origin::shop, {}});
    book.of<Factor>().put(
        {Id<Factor>(2), Condition::upperFloor, Percent::whole(104), Origin::shop, {}});
    Conditions both;
    both.add(Condition::stainGrade);
    EXPECT_DOUBLE_EQ(book.factor(both), 1.3);
    both.add(Condition::upperFloor);
    EXPECT_NEAR(book.factor(both), 1.352, 1e-12);
    both.add(Condition::radius); // the book says nothing of it
    EXPECT_NEAR(book.factor(both), 1.352, 1e-12);
}

TEST(Task, BelongsToAPieceOfWorkAndHasAUnit) {
    EXPECT_EQ(pieceOfWork(Task::casedOpening), PieceOfWork::doors);
    EXPECT_EQ(pieceOfWork(Task::pictureFrameWindow), PieceOfWork::windows);
    EXPECT_EQ(pieceOfWork(Task::jambExtension), PieceOfWork::windows);
    EXPECT_EQ(pieceOfWork(Task::shoe), PieceOfWork::base);
    EXPECT_EQ(pieceOfWork(Task::largeCrown), PieceOfWork::crown);
    EXPECT_EQ(pieceOfWork(Task::wainscot), PieceOfWork::wallTreatment);
    EXPECT_EQ(pieceOfWork(Task::closetShelf), PieceOfWork::closets);
    EXPECT_EQ(pieceOfWork(Task::closedSkirt), PieceOfWork::stairs);
    EXPECT_EQ(pieceOfWork(Task::mantel), PieceOfWork::builtIns);
    EXPECT_EQ(pieceOfWork(Task::doorStop), PieceOfWork::hardware);
    EXPECT_EQ(pieceOfWork(Task::trip), PieceOfWork::trips);
    EXPECT_EQ(pieceOfWork(Task::punch), PieceOfWork::punch);
    EXPECT_EQ(pieceOfWork(Task::other), PieceOfWork::extras);
    EXPECT_EQ(unitOf(Task::base), Unit::linearFoot);
    EXPECT_EQ(unitOf(Task::shiplap), Unit::squareFoot);
    EXPECT_EQ(unitOf(Task::longSide), Unit::side);
    EXPECT_EQ(unitOf(Task::treadsAndRisers), Unit::flight);
    EXPECT_EQ(unitOf(Task::prehungDoor), Unit::each);
}

} // namespace
} // namespace miterbook
