// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/cut/saw_kit.h"
#include "cut/assembly_sets.h"

#include <gmock/gmock.h>

#include <numeric>

using namespace miterbook;
using namespace miterbook::kit;

namespace {

std::vector<std::size_t> all(const SawSheet& sheet) {
    std::vector<std::size_t> places(sheet.pieces.size());
    std::iota(places.begin(), places.end(), std::size_t{0});
    return places;
}

} // namespace

TEST(Progress, KnowsPiecesByNumberAndName) {
    const SawHouse house = bigLevel();
    const SawSheet sheet = house.sheet();
    EXPECT_EQ(*piecesCalled(sheet, "3"), sheet.stop(3)->pieces);
    EXPECT_EQ(piecesCalled(sheet, " stick 2")->size(), sheet.stick(2)->pieces.size());
    EXPECT_EQ(piecesCalled(sheet, "S2")->size(), sheet.stick(2)->pieces.size());
    EXPECT_EQ(piecesCalled(sheet, "w4")->size(), 4U);
    EXPECT_EQ(piecesCalled(sheet, "D1")->size(), 6U);
    const auto second = piecesCalled(sheet, "d1 Face 2");
    ASSERT_EQ(second->size(), 3U);
    for (const std::size_t at : *second)
        EXPECT_EQ(sheet.pieces[at].piece.key.copy, 2);
    for (const char* none : {"D1 face 3", "D1 face", "D1 face x", "D1 face 0", "face 1"})
        EXPECT_FALSE(piecesCalled(sheet, none).ok()) << none;
    EXPECT_THAT(piecesCalled(sheet, "99").error().sentence, testing::HasSubstr("\"99\""));
    EXPECT_FALSE(piecesCalled(sheet, "").ok());
}

TEST(Progress, IsTypedWithHowFarItIs) {
    SawHouse house = bigLevel();
    SawSheet sheet = house.sheet();
    EXPECT_EQ(typedTick(sheet, "3")->pieces, sheet.stop(3)->pieces);
    EXPECT_EQ(typedTick(sheet, "3")->state, PieceState::cut);
    EXPECT_TRUE(typedTick(sheet, "w4 Spoiled")->pieces.empty()); // nothing of it is cut
    house.tick(typedTick(sheet, "W4 hung")->pieces, typedTick(sheet, "W4 hung")->state);
    sheet = house.sheet();
    const auto w4 = piecesCalled(sheet, "w4");
    for (const std::size_t at : *w4)
        EXPECT_EQ(sheet.pieces[at].state, PieceState::hung);
    EXPECT_TRUE(typedTick(sheet, "W4")->pieces.empty()); // it is not cut anew
    EXPECT_EQ(typedTick(sheet, "W4 spoiled")->pieces.size(), 4U);
    EXPECT_THAT(typedTick(sheet, "X9 hung").error().sentence, testing::HasSubstr("\"X9\""));
    EXPECT_FALSE(typedTick(sheet, "hung").ok());
}

TEST(Progress, OfAnOpeningIsThatOfItsLeastPiece) {
    SawHouse house = bigLevel();
    const std::int64_t w1 = house.whole.openings[0].id.value();
    const auto state = [&] { return stateOf(house.sheet(), w1, 1); };
    EXPECT_EQ(state(), PieceState::listed);
    const auto pieces = piecesOf(house.sheet(), w1, 1);
    ASSERT_EQ(pieces.size(), 4U);
    house.tick({pieces[0], pieces[1], pieces[2]});
    EXPECT_EQ(state(), PieceState::listed);
    house.tick(pieces);
    EXPECT_EQ(state(), PieceState::cut);
    house.tick(pieces, PieceState::hung);
    EXPECT_EQ(state(), PieceState::hung);
    house.tick({pieces[1]}, PieceState::spoiled);
    EXPECT_EQ(state(), PieceState::listed);
    EXPECT_FALSE(stateOf(house.sheet(), 4711, 1));
}

TEST(Progress, FirstTickListsTheWholeProfileOnce) {
    SawHouse house = bigLevel();
    const SawSheet sheet = house.sheet();
    const auto rows = ticked(sheet, {5}, PieceState::cut, Id<Plan>(1), house.kept, house.ids);
    EXPECT_EQ(rows.size(), sheet.pieces.size());
    house.put(rows);
    EXPECT_EQ(
        ticked(house.sheet(), {6}, PieceState::cut, Id<Plan>(1), house.kept, house.ids).size(), 1U);
    EXPECT_TRUE(listed(house.sheet(), {}, Id<Plan>(1), house.kept, house.ids).empty());
}

TEST(Drops, AreWhatCutSticksHaveLeft) {
    SawHouse house = bigLevel();
    EXPECT_TRUE(dropsOf(house.sheet(), in(24)).empty());
    house.tick(all(house.sheet()));
    const auto drops = dropsOf(house.sheet(), in(6));
    ASSERT_FALSE(drops.empty());
    for (const Drop& drop : drops)
        EXPECT_GE(drop.length, in(6));
}

TEST(AssemblyPlan, BeginsWithTheSetsThatTheSawCompletesFirst) {
    const SawHouse house = bigLevel();
    const SawSheet sheet = house.sheet();
    const AssemblyPlan plan = assemblyPlan(sheet, {}, house.bench, house.book);
    EXPECT_EQ(plan.bench.size() + plan.floor.size(), 26U + 36U);
    EXPECT_TRUE(std::ranges::is_sorted(plan.bench, {}, &AssemblySet::ready));
    for (const AssemblySet& set : plan.floor)
        EXPECT_GT(set.longest, in(72));
    for (const AssemblySet& set : plan.bench) {
        EXPECT_EQ(set.corners, 4);   // door sides are over 6 ft and go on the floor
        EXPECT_EQ(set.fasteners, 1); // yellow glue: at any width
    }
    // a = 2 + 1 minutes, d = 30, 16 clamps: no clamp is waited for [calc].
    EXPECT_DOUBLE_EQ(plan.firstOff, 4 * 3 + 30);
    EXPECT_EQ(plan.clampsNeeded, 11);
    EXPECT_DOUBLE_EQ(plan.setsPerHour, 5);
}

TEST(AssemblyPlan, LeavesOutWhatIsHung) {
    SawHouse house = bigLevel();
    house.tick(piecesOf(house.sheet(), house.whole.openings[0].id.value(), 1), PieceState::hung);
    const AssemblyPlan plan = assemblyPlan(house.sheet(), {}, house.bench, house.book);
    for (const AssemblySet& set : plan.bench)
        EXPECT_NE(set.name, "W1");
    EXPECT_EQ(plan.bench.size(), 20U); // five are too tall for the bench
}
