// SPDX-License-Identifier: GPL-3.0-or-later
// What cutting does to the shop's rack: an offcut is counted once, whichever house cuts it.
#include "job/rack_edits.h"

#include "bid/stick_supply.h"
#include "cut/progress.h"
#include "job/cut_figures.h"
#include "job/remove_opening.h"
#include "support/small_book.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <numeric>

using namespace miterbook;

namespace {

const Id<Plan> aspenOfRack(31);
const Id<Profile> casing(20);

/// A house at the saw with two offcuts in the rack, each long enough for a leg.
class RackTest : public testing::Test {
protected:
    RackTest()
        : book(smallBook()) {
        Offcut offcut;
        offcut.id = Id<Offcut>(22);
        offcut.profile = casing;
        offcut.length = Length::inches(70);
        offcut.count = 2;
        book.prices.of<Offcut>().put(offcut);
        Practice practice;
        practice.id = Id<Practice>(1);
        practice.keepOffcut = Length::inches(10);
        book.prices.of<Practice>().put(practice);
    }

    JobFigures figures() const { return figuresFor(book, aspenOfRack, {}, Effort::quick); }
    SawSheet sheet() const { return cutFiguresFor(book, figures()).sheet; }
    int inRack(Length length) const {
        int count = 0;
        for (const auto& [id, offcut] : book.prices.of<Offcut>())
            count += offcut.length == length ? offcut.count : 0;
        return count;
    }
    Edit ticks(const std::vector<std::size_t>& places, PieceState state) {
        const auto rows = ticked(
            sheet(), places, state, aspenOfRack, book.sheet(aspenOfRack).of<CutPiece>(), ids);
        EditBuilder edit(book, "Mark");
        keepRack(edit, ids, aspenOfRack, rows);
        for (const CutPiece& row : rows)
            edit.put(row);
        return edit.take();
    }
    void tick(const std::vector<std::size_t>& places, PieceState state = PieceState::cut) {
        apply(book, ticks(places, state));
    }
    std::vector<std::size_t> everything() const {
        std::vector<std::size_t> places(sheet().pieces.size());
        std::iota(places.begin(), places.end(), std::size_t{0});
        return places;
    }
    /// A piece that comes out of the rack.
    std::size_t fromRack() const {
        const SawSheet now = sheet();
        for (const SheetStick& stick : now.sticks) {
            if (stick.fromRack)
                return stick.pieces.front();
        }
        ADD_FAILURE() << "nothing is cut from the rack";
        return 0;
    }

    Book book;
    IdSource ids{1000};
};

} // namespace

TEST_F(RackTest, AnOffcutIsTakenOffWhenItIsBegun) {
    const JobFigures before = figures();
    const SawSheet planned = sheet();
    const std::size_t piece = fromRack();
    const Edit edit = ticks({piece}, PieceState::cut);
    const Book untouched = book;
    apply(book, edit);
    EXPECT_EQ(inRack(Length::inches(70)), 1);
    EXPECT_EQ(figures().buy, before.buy); // what was ordered for the house stays as it was
    EXPECT_EQ(figures().estimate, before.estimate);
    const SawSheet now = sheet();
    for (std::size_t i = 0; i < planned.pieces.size(); ++i)
        EXPECT_EQ(now.pieces[i].stick, planned.pieces[i].stick);
    apply(book, inverse(edit));
    EXPECT_EQ(book, untouched);
}

TEST_F(RackTest, AnOffcutGoesBackWhenNothingIsCutOfIt) {
    const std::size_t piece = fromRack();
    tick({piece});
    tick({piece}, PieceState::listed);
    EXPECT_EQ(inRack(Length::inches(70)), 2);
    EXPECT_TRUE(book.sheet(aspenOfRack).of<RackMove>().empty());
    tick({piece});
    tick({piece}, PieceState::spoiled); // it is used up all the same
    EXPECT_EQ(inRack(Length::inches(70)), 1);
}

TEST_F(RackTest, RemaindersArePutAwayOnce) {
    tick(everything());
    EXPECT_EQ(inRack(Length::inches(70)), 0);
    const JobFigures before = figures();
    const std::vector<Drop> drops = dropsOf(sheet(), book.prices.practice().keepOffcut);
    ASSERT_FALSE(drops.empty());
    const Book untouched = book;
    const Edit edit = putAwayEdit(book, ids, aspenOfRack, sheet());
    apply(book, edit);
    int stored = 0;
    for (const auto& [id, offcut] : book.prices.of<Offcut>()) {
        EXPECT_EQ(offcut.length.nm() % Length::sixteenths(1).nm(), 0);
        EXPECT_GE(offcut.length, book.prices.practice().keepOffcut);
        stored += offcut.count;
    }
    EXPECT_EQ(stored, static_cast<int>(drops.size()));
    EXPECT_TRUE(putAwayEdit(book, ids, aspenOfRack, sheet()).empty());
    EXPECT_EQ(figures().buy, before.buy); // its own remainders make the house no cheaper
    EXPECT_EQ(stickSupply(casing, pricesFor(book, Id<Plan>(77))).kinds.front().available, stored)
        << "another house finds them";
    apply(book, inverse(edit));
    EXPECT_EQ(book, untouched);
}

TEST_F(RackTest, ARemainderComesOutAgainWhenItsStickIsToBeCutFurther) {
    tick(everything());
    apply(book, putAwayEdit(book, ids, aspenOfRack, sheet()));
    const SawSheet now = sheet();
    const auto racked = std::ranges::find_if(now.sticks, &SheetStick::racked);
    ASSERT_NE(racked, now.sticks.end());
    const auto stored = [&] {
        int count = 0;
        for (const auto& [id, offcut] : book.prices.of<Offcut>())
            count += offcut.count;
        return count;
    };
    const int before = stored();
    tick({racked->pieces.front()}, PieceState::listed);
    EXPECT_EQ(stored(), before - 1);
    EXPECT_FALSE(sheet().stick(racked->number)->racked);
}

TEST_F(RackTest, ASpoiledPieceTakesItsRemainderOutOfTheRackAgain) {
    book.prices.of<Offcut>().erase(Id<Offcut>(22));
    Opening narrow = *findRow(book, Id<Opening>(44));
    narrow.width = Length::inches(24); // its head comes out of a remainder
    apply(book, putEdit(book, "Revise", narrow));
    tick(everything());
    apply(book, putAwayEdit(book, ids, aspenOfRack, sheet()));
    const auto stored = [&] {
        int count = 0;
        for (const auto& [id, offcut] : book.prices.of<Offcut>())
            count += offcut.count;
        return count;
    };
    const int before = stored();
    ASSERT_GT(before, 0);
    const std::size_t spoiled = sheet().stops.back().pieces.front();
    tick({spoiled}, PieceState::spoiled);
    const SheetPiece again = sheet().pieces[spoiled];
    ASSERT_GT(again.stick, 0);
    EXPECT_FALSE(sheet().stick(again.stick)->racked);
    EXPECT_TRUE(sheet().stick(again.stick)->fromRack);
    EXPECT_EQ(stored(), before) << "it is not begun yet";
    const JobFigures figured = figures();
    tick({spoiled});
    EXPECT_EQ(stored(), before - 1);
    EXPECT_EQ(figures().buy, figured.buy);
}

TEST_F(RackTest, WhatAnotherHouseHasCutUpIsNotCountedOn) {
    const std::size_t piece = fromRack();
    const SawSheet planned = sheet();
    // The numbers are kept, and before the first cut the rack is emptied by somebody else.
    for (const CutPiece& row :
        listed(planned, {}, aspenOfRack, book.sheet(aspenOfRack).of<CutPiece>(), ids))
        apply(book, putEdit(book, "Keep", row));
    Offcut gone = *book.prices.of<Offcut>().find(Id<Offcut>(22));
    gone.count = 0;
    apply(book, putEdit(book, "Take", gone));
    const SawSheet now = sheet();
    EXPECT_EQ(now.pieces[piece].stop, planned.pieces[piece].stop);
    ASSERT_GT(now.pieces[piece].stick, 0);
    EXPECT_FALSE(now.stick(now.pieces[piece].stick)->fromRack);
}

TEST_F(RackTest, AnOpeningGoesWithItsMeasuresAndWhatWasCutStays) {
    Measure measure;
    measure.id = Id<Measure>(90);
    measure.plan = aspenOfRack;
    measure.opening = Id<Opening>(43);
    Measure other = measure;
    other.id = Id<Measure>(91);
    other.opening = Id<Opening>(44);
    for (const Measure& row : {measure, other})
        apply(book, putEdit(book, "Measure", row));
    tick(piecesOf(sheet(), 43, 1));
    const Book untouched = book;
    EditBuilder edit(book, "Remove window W1");
    removeWithMeasures(edit, Id<Opening>(43));
    const Edit removal = edit.take();
    apply(book, removal);
    EXPECT_FALSE(book.sheet(aspenOfRack).of<Measure>().contains(measure.id));
    EXPECT_TRUE(book.sheet(aspenOfRack).of<Measure>().contains(other.id));
    EXPECT_EQ(book.sheet(aspenOfRack).of<CutPiece>(), untouched.sheet(aspenOfRack).of<CutPiece>());
    EXPECT_TRUE(piecesOf(sheet(), 43, 1).empty());
    apply(book, inverse(removal));
    EXPECT_EQ(book, untouched);
}
