// SPDX-License-Identifier: GPL-3.0-or-later
// The saw sheet: every piece once, few settings, sticks that are there; and that what is cut stays.
#include "core/cut/saw_kit.h"
#include "cut/saw_sheet.h"

#include <map>
#include <numeric>
#include <random>
#include <set>

using namespace miterbook;
using namespace miterbook::kit;

namespace {

using LengthsAt = std::set<std::tuple<Id<Profile>, Length, Length, int>>;

/// Distinct lengths of a sheet's pieces by how they are wanted: profile, short, long point, miters.
LengthsAt distinctLengths(const SawSheet& sheet) {
    LengthsAt lengths;
    for (const SheetPiece& piece : sheet.pieces) {
        const int miters = (piece.piece.left.cut == EndCut::miter)
            + (piece.piece.right.cut == EndCut::miter);
        lengths.emplace(piece.piece.profile, piece.piece.shortPoint, piece.piece.longPoint, miters);
    }
    return lengths;
}

/// Goes through the sticks with the saw in hand: nothing is cut out of what is not there.
void expectFits(const SawSheet& sheet, const SawHouse& house) {
    std::map<std::tuple<Id<Profile>, Length, bool>, int> taken;
    for (const SheetStick& stick : sheet.sticks) {
        ++taken[{stick.profile, stick.length, stick.fromRack}];
        double used = 0;
        for (const std::size_t at : stick.pieces) {
            EXPECT_EQ(sheet.pieces[at].stick, stick.number);
            EXPECT_EQ(sheet.pieces[at].piece.profile, stick.profile);
            used += sheet.pieces[at].longPoint.toInches();
        }
        const double kerfs = static_cast<double>(stick.pieces.size()) - 1;
        EXPECT_LE(used + kerfs * 0.125, stick.length.toInches()) << "stick " << stick.number;
    }
    for (const StickOnHand& on : house.sticks)
        EXPECT_LE((taken[{on.profile, on.length, on.fromRack}]), on.count);
    for (const SheetPiece& piece : sheet.pieces)
        EXPECT_GT(piece.stick, 0) << piece.piece.source.name << " " << piece.piece.key.part;
}

std::vector<std::size_t> everyOther(const SawSheet& sheet) {
    std::vector<std::size_t> half;
    for (std::size_t i = 0; i < sheet.pieces.size(); i += 2)
        half.push_back(i);
    return half;
}

} // namespace

TEST(SawSheet, OfALevelHasFewSettingsAndEveryPieceOnce) {
    const SawHouse house = bigLevel();
    const SawSheet sheet = house.sheet();
    EXPECT_EQ(sheet.pieces.size(), 26U * 4 + 18U * 2 * 3);
    EXPECT_LE(sheet.stops.size(), distinctLengths(sheet).size());
    // Five heights and three widths of windows, 36 once for both; door heads of 30 share the
    // windows' and those of 32 have their own; all door legs are alike.
    EXPECT_EQ(sheet.stops.size(), 5U + 3 - 1 + 1 + 1);
    std::vector<int> seen(sheet.pieces.size());
    for (const SheetStop& stop : sheet.stops) {
        for (const std::size_t at : stop.pieces)
            ++seen[at];
    }
    EXPECT_EQ(std::ranges::count(seen, 1), static_cast<std::ptrdiff_t>(seen.size()));
    EXPECT_TRUE(sheet.problems.empty());
    expectFits(sheet, house);
}

TEST(SawSheet, HasTheLengthsOfTheTrade) {
    SawHouse house;
    house.add(window(in(36), in(60)), "W1");
    house.add(door(in(30)), "D1");
    house.buy();
    const SawSheet sheet = house.sheet();
    std::map<std::string, SheetPiece> byName;
    for (const SheetPiece& piece : sheet.pieces)
        byName[piece.piece.source.name + " " + piece.piece.key.part] = piece;
    // 36 x 60, r 3/16, c 3 1/4: head 36 3/8 short point, 42 7/8 long; leg 60 3/8, 66 7/8 [calc].
    EXPECT_EQ(byName["W1 head"].shortPoint, in(36, 6));
    EXPECT_EQ(byName["W1 head"].longPoint, in(42, 14));
    EXPECT_EQ(byName["W1 left leg"].shortPoint, in(60, 6));
    EXPECT_EQ(byName["W1 left leg"].longPoint, in(66, 14));
    // 6/8 door: leg h + r short point, + c long point; head w + 2r [calc].
    EXPECT_EQ(byName["D1 right leg"].shortPoint, in(80, 3));
    EXPECT_EQ(byName["D1 right leg"].longPoint, in(83, 7));
    for (const SheetStop& stop : sheet.stops) {
        const bool frame = stop.left.cut == EndCut::miter && stop.right.cut == EndCut::miter;
        EXPECT_EQ(stop.offset, frame ? in(6, 8) : in(3, 4)); // 2c, c
    }
}

TEST(SawSheet, GoesDownFromTheLongestSetting) {
    const SawSheet sheet = bigLevel().sheet();
    EXPECT_TRUE(std::ranges::is_sorted(sheet.stops, std::ranges::greater(), &SheetStop::setting));
    int number = 0;
    for (const SheetStop& stop : sheet.stops)
        EXPECT_EQ(stop.number, ++number);
    std::set<int> up;
    for (const SheetStop& stop : sheet.stops) {
        for (const StickUse& use : stop.sticks)
            EXPECT_EQ(use.takenUp, up.insert(use.stick).second);
    }
    EXPECT_EQ(up.size(), sheet.sticks.size());
}

TEST(SawSheet, GroupsWhatWasMeasuredWithinTheFinish) {
    SawHouse house;
    for (int i = 0; i < 6; ++i) {
        const Opening& opening = house.add(window(in(36), in(60)), "W" + std::to_string(i));
        house.measure(opening, in(36) + Length::sixtyFourths(i), in(60) + Length::sixtyFourths(i));
    }
    house.buy();
    EXPECT_EQ(house.sheet().stops.size(), 2U); // all within 1/16 of one setting
    house.bench.paintTolerance = Length();
    EXPECT_EQ(house.sheet().stops.size(), 12U);
}

TEST(SawSheet, GivesOppositeSidesOneStop) {
    SawHouse house = bigLevel();
    std::mt19937 random(9);
    for (const Opening& opening : house.whole.openings) {
        Measure row = house.measure(opening, opening.width, opening.height);
        row.heightRight += Length::thirtySeconds(static_cast<int>(random() % 9));
        row.widthBottom += Length::thirtySeconds(static_cast<int>(random() % 9));
        house.put(row);
    }
    const SawSheet sheet = house.sheet();
    std::map<std::pair<std::int64_t, bool>, std::set<int>> stops;
    for (const SheetPiece& piece : sheet.pieces) {
        if (piece.piece.source.name.starts_with("W"))
            stops[{piece.piece.key.source, piece.piece.key.part.ends_with("leg")}].insert(
                piece.stop);
    }
    EXPECT_EQ(stops.size(), 52U);
    for (const auto& [side, numbers] : stops)
        EXPECT_EQ(numbers.size(), 1U);
}

TEST(SawSheet, OneMeasureChangesOnlyWhatIsNotCutOfItsOpening) {
    SawHouse house = bigLevel();
    for (const Opening& opening : house.whole.openings)
        house.measure(opening, opening.width, opening.height);
    house.tick(everyOther(house.sheet()));
    const SawSheet before = house.sheet();
    const Opening& changed = house.whole.openings[4];
    Measure row = *measureOf(house.measures, changed.id, 1);
    row.widthTop += in(0, 6);
    row.widthBottom += in(0, 6);
    row.heightLeft += in(0, 5);
    row.heightRight += in(0, 5);
    house.put(row);
    const SawSheet after = house.sheet();
    ASSERT_EQ(after.pieces.size(), before.pieces.size());
    int moved = 0;
    for (std::size_t i = 0; i < before.pieces.size(); ++i) {
        const SheetPiece& was = before.pieces[i];
        const SheetPiece& is = after.pieces[i];
        const bool may = was.piece.key.source == changed.id.value() && !was.isCut();
        if (!may) {
            EXPECT_EQ(is.shortPoint, was.shortPoint);
            EXPECT_EQ(is.stop, was.stop);
            EXPECT_EQ(is.stick, was.stick);
            EXPECT_EQ(is.state, was.state);
        } else {
            EXPECT_NE(is.shortPoint, was.shortPoint);
            ++moved;
        }
        EXPECT_EQ(is.differs, was.isCut() && was.piece.key.source == changed.id.value());
    }
    EXPECT_EQ(moved, 2);
    EXPECT_EQ(after.problems.size(), 2U); // its two pieces that were cut no longer fit
}

TEST(SawSheet, StaysAsItIsWhileItIsTicked) {
    SawHouse house = bigLevel();
    const SawSheet fresh = house.sheet();
    for (std::size_t at = 0; at < fresh.pieces.size(); at += 17) {
        house.tick({at});
        const SawSheet sheet = house.sheet();
        for (std::size_t i = 0; i < fresh.pieces.size(); ++i) {
            EXPECT_EQ(sheet.pieces[i].stop, fresh.pieces[i].stop);
            EXPECT_EQ(sheet.pieces[i].stick, fresh.pieces[i].stick);
            EXPECT_EQ(sheet.pieces[i].isCut(), i % 17 == 0 && i <= at);
        }
    }
    house.tick({0}, PieceState::listed);
    EXPECT_FALSE(house.sheet().pieces[0].isCut());
}

TEST(SawSheet, CutsASpoiledPieceFromTheSmallestDrop) {
    SawHouse house = bigLevel();
    house.sticks = {{profiles.casing, ft(16), false, 90}};
    const SawSheet fresh = house.sheet();
    std::vector<std::size_t> all(fresh.pieces.size());
    std::iota(all.begin(), all.end(), std::size_t{0});
    house.tick(all);
    const SheetStop& shortest = fresh.stops.back();
    const std::size_t spoiled = shortest.pieces.front();
    Length smallest; // drop that takes it
    for (const SheetStick& stick : fresh.sticks) {
        if (stick.left >= fresh.pieces[spoiled].longPoint
            && (smallest == Length() || stick.left < smallest))
            smallest = stick.left;
    }
    ASSERT_GT(smallest, Length());
    house.tick({spoiled}, PieceState::spoiled);
    const SawSheet again = house.sheet();
    const SheetPiece& recut = again.pieces[spoiled];
    EXPECT_FALSE(recut.isCut());
    EXPECT_EQ(recut.stop, shortest.number);
    EXPECT_EQ(fresh.stick(recut.stick)->left, smallest);
    EXPECT_GT(again.stick(fresh.pieces[spoiled].stick)->gone, Length());
    for (std::size_t i = 0; i < fresh.pieces.size(); ++i) {
        if (i != spoiled) {
            EXPECT_TRUE(again.pieces[i].isCut());
        }
    }
}

TEST(SawSheet, SaysWhichProfileRunsShort) {
    SawHouse house = bigLevel();
    house.sticks.front().count -= 2;
    const SawSheet sheet = house.sheet();
    ASSERT_EQ(sheet.problems.size(), 1U);
    EXPECT_NE(sheet.problems[0].find("no stick on hand"), std::string::npos);
}

TEST(SawSheet, TakesAnOpeningAddedLaterToWhatIsLeft) {
    SawHouse house = bigLevel();
    for (StickOnHand& stick : house.sticks)
        stick.count += 2;
    house.tick(everyOther(house.sheet()));
    const SawSheet before = house.sheet();
    house.add(window(in(36), in(60)), "W99");
    const SawSheet after = house.sheet();
    for (std::size_t i = 0, k = 0; i < after.pieces.size(); ++i) {
        if (after.pieces[i].piece.source.name == "W99")
            EXPECT_GT(after.pieces[i].stick, 0);
        else
            EXPECT_EQ(after.pieces[i].stop, before.pieces[k++].stop);
    }
    EXPECT_EQ(after.stops.size(), before.stops.size()); // it is cut at stops that are there
}
