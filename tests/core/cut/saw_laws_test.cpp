// SPDX-License-Identifier: GPL-3.0-or-later
// Days at the saw made up at random: whatever is ticked, spoiled, measured again or added, the
// sheet keeps its promises.
#include "core/cut/saw_kit.h"
#include "cut/opening_states.h"
#include "cut/saw_sheet.h"

#include <map>
#include <random>
#include <set>

using namespace miterbook;
using namespace miterbook::kit;

namespace {

using Random = std::mt19937;

int below(Random& random, std::size_t count) {
    return static_cast<int>(random() % std::max<std::size_t>(count, 1));
}

SawHouse randomHouse(Random& random) {
    SawHouse house;
    const int openings = 3 + below(random, 8);
    for (int i = 0; i < openings; ++i) {
        const std::string number = std::to_string(i + 1);
        if (random() % 3 == 0) {
            house.add(door(in(28 + 2 * below(random, 4))), "D" + number);
        } else {
            Opening made = window(in(18 + 6 * below(random, 5)), in(30 + 6 * below(random, 6)));
            made.count = 1 + below(random, 3) / 2;
            house.add(made, "W" + number);
        }
    }
    house.buy();
    for (StickOnHand& stick : house.sticks)
        stick.count += 6; // what the day will want more
    return house;
}

/// Each piece stands at one stop, all at a stop alike, and no stop is set twice.
void expectStops(const SawSheet& sheet) {
    std::vector<int> seen(sheet.pieces.size());
    std::set<int> numbers;
    for (const SheetStop& stop : sheet.stops) {
        EXPECT_TRUE(numbers.insert(stop.number).second) << "stop " << stop.number;
        int cut = 0;
        for (const std::size_t at : stop.pieces) {
            const SheetPiece& piece = sheet.pieces[at];
            ++seen[at];
            cut += piece.isCut() ? 1 : 0;
            EXPECT_EQ(piece.stop, stop.number);
            EXPECT_EQ(piece.shortPoint, stop.setting);
            EXPECT_EQ(piece.longPoint - piece.shortPoint, stop.offset);
            EXPECT_EQ(piece.piece.profile, stop.profile);
        }
        EXPECT_EQ(stop.cut, cut);
    }
    EXPECT_EQ(std::ranges::count(seen, 1), std::ssize(seen));
}

/// What is still to be cut comes out as its opening allows.
void expectLengths(const SawSheet& sheet, const SawHouse& house) {
    for (const SheetPiece& piece : sheet.pieces) {
        const Length off = piece.shortPoint > piece.piece.shortPoint
            ? piece.shortPoint - piece.piece.shortPoint
            : piece.piece.shortPoint - piece.shortPoint;
        const Length allowed = toleranceFor(piece.piece, house.book, house.bench)
            + piece.piece.slack;
        if (!piece.isCut() || !piece.differs) {
            EXPECT_LE(off, allowed) << piece.piece.source.name << " " << piece.piece.key.part;
        }
    }
}

/// No stick gives more than it has, and no more sticks are taken up than lie there.
void expectSticks(const SawSheet& sheet, const SawHouse& house) {
    std::map<int, Length> used;
    for (const auto& [id, row] : house.kept) {
        const bool gone = row.state == PieceState::spoiled;
        if (gone && row.stick != 0)
            used[row.stick] += row.longPoint + house.book.practice().kerf;
    }
    std::map<std::tuple<Id<Profile>, Length, bool>, int> taken;
    for (const SheetStick& stick : sheet.sticks) {
        ++taken[{stick.profile, stick.length, stick.fromRack}];
        for (const std::size_t at : stick.pieces) {
            EXPECT_EQ(sheet.pieces[at].stick, stick.number);
            used[stick.number] += sheet.pieces[at].longPoint + house.book.practice().kerf;
        }
        EXPECT_LE(used[stick.number], stick.length + house.book.practice().kerf)
            << "stick " << stick.number;
        EXPECT_GE(stick.left, Length());
    }
    for (const StickOnHand& on : house.sticks)
        EXPECT_LE((taken[{on.profile, on.length, on.fromRack}]), on.count);
}

/// Whether a stop or stick of what stays may not have moved.
void expectKept(const SawSheet& before, const SawSheet& after, const std::set<PieceKey>& touched) {
    std::map<PieceKey, const SheetPiece*> now;
    for (const SheetPiece& piece : after.pieces)
        now[piece.piece.key] = &piece;
    for (const SheetPiece& was : before.pieces) {
        if (!was.kept || touched.contains(was.piece.key))
            continue;
        const auto it = now.find(was.piece.key);
        ASSERT_NE(it, now.end());
        const SheetPiece& is = *it->second;
        if (!was.isCut() && is.piece.shortPoint != was.piece.shortPoint)
            continue; // measured again and not cut yet
        EXPECT_EQ(is.stop, was.stop) << was.piece.source.name << " " << was.piece.key.part;
        EXPECT_EQ(is.stick, was.stick) << was.piece.source.name << " " << was.piece.key.part;
        EXPECT_EQ(is.shortPoint, was.shortPoint);
        EXPECT_EQ(is.state, was.state);
    }
}

void expectStates(const SawSheet& sheet) {
    for (const auto& [id, row] : openingStates(sheet)) {
        for (const SheetPiece& piece : sheet.pieces) {
            if (piece.piece.key.source == id) {
                EXPECT_GE(piece.state, row.state);
            }
        }
        EXPECT_LE(row.further, row.units);
    }
}

/// One thing that happens at the saw. Returns the pieces that it is about.
std::set<PieceKey> happen(SawHouse& house, Random& random) {
    const SawSheet sheet = house.sheet();
    std::vector<std::size_t> places;
    PieceState state = PieceState::cut;
    switch (random() % 6) {
    case 0: // a piece
        places = {static_cast<std::size_t>(below(random, sheet.pieces.size()))};
        break;
    case 1: // a stop
        places = sheet.stops[static_cast<std::size_t>(below(random, sheet.stops.size()))].pieces;
        break;
    case 2: // one that is cut is spoiled
        places = tickable(sheet, {static_cast<std::size_t>(below(random, sheet.pieces.size()))},
            PieceState::spoiled);
        state = PieceState::spoiled;
        break;
    case 3: { // an opening goes on to be hung
        const PieceKey& key
            = sheet.pieces[static_cast<std::size_t>(below(random, sheet.pieces.size()))].piece.key;
        places = piecesOf(sheet, key.source, key.unit);
        state = random() % 2 == 0 ? PieceState::assembled : PieceState::hung;
        break;
    }
    case 4: { // an opening is measured, or measured again
        const auto& openings = house.whole.openings;
        const Opening& opening = openings[static_cast<std::size_t>(below(random, openings.size()))];
        const Measure* present = measureOf(house.measures, opening.id, 1);
        Measure row = present ? *present : Measure();
        row.id = present ? row.id : house.ids.next<Measure>();
        row.opening = opening.id;
        const auto off = [&] { return Length::thirtySeconds(below(random, 17) - 8); };
        row.widthTop = opening.width + off();
        row.widthBottom = opening.width + off();
        row.heightLeft = opening.height + off();
        row.heightRight = opening.height + off();
        house.put(row);
        break;
    }
    default: // one more window
        if (house.whole.openings.size() < 14)
            house.add(window(in(24), in(36 + below(random, 3))),
                "X" + std::to_string(house.whole.openings.size()));
        break;
    }
    std::set<PieceKey> touched;
    for (const std::size_t at : places)
        touched.insert(sheet.pieces[at].piece.key);
    if (!places.empty())
        house.tick(places, state);
    return touched;
}

} // namespace

class SawLaws : public testing::TestWithParam<unsigned> {};

TEST_P(SawLaws, HoldThroughADay) {
    Random random(GetParam());
    SawHouse house = randomHouse(random);
    SawSheet before = house.sheet();
    for (int step = 0; step < 25 && !HasFailure(); ++step) {
        const std::set<PieceKey> touched = happen(house, random);
        const SawSheet sheet = house.sheet();
        SCOPED_TRACE("step " + std::to_string(step));
        expectStops(sheet);
        expectLengths(sheet, house);
        expectSticks(sheet, house);
        expectKept(before, sheet, touched);
        expectStates(sheet);
        EXPECT_EQ(house.sheet(), sheet) << "the same rows give the same sheet";
        before = sheet;
    }
}

INSTANTIATE_TEST_SUITE_P(Days, SawLaws, testing::Range(1U, 25U));
