// SPDX-License-Identifier: GPL-3.0-or-later
#include "cut/saw_sheet.h"

#include "cut/sheet_sticks.h"
#include "cut/sheet_stops.h"
#include "takeoff/geometry.h"

#include <algorithm>
#include <map>
#include <set>

namespace miterbook {

namespace {

/// The row of each piece that is not spoiled; were there two, the later.
std::map<PieceKey, const CutPiece*> liveRows(const Table<CutPiece>& kept) {
    std::map<PieceKey, const CutPiece*> rows;
    for (const auto& [id, row] : kept) {
        if (row.state != PieceState::spoiled)
            rows[PieceKey{row.source, row.unit, row.part, row.copy}] = &row;
    }
    return rows;
}

bool isWantedAsListed(const SawPiece& piece, const CutPiece& row) {
    return row.profile == piece.profile && row.wanted == piece.shortPoint
        && row.longPoint - row.shortPoint == piece.longPoint - piece.shortPoint;
}

/// Whether what was cut is still within what the opening allows.
bool stillServes(const SawPiece& piece, const CutPiece& row, Length tolerance) {
    const Length off = row.shortPoint > piece.shortPoint ? row.shortPoint - piece.shortPoint
                                                         : piece.shortPoint - row.shortPoint;
    return row.profile == piece.profile && off <= tolerance + piece.slack;
}

SheetPiece onSheet(const SawPiece& piece, const CutPiece* row, const SawJob& job) {
    SheetPiece made;
    made.piece = piece;
    made.shortPoint = piece.shortPoint;
    made.longPoint = piece.longPoint;
    if (!row)
        return made;
    made.row = row->id; // a row that is not heeded is written over when the piece is kept again
    made.state = row->state;
    const bool asListed = isWantedAsListed(piece, *row);
    if (!made.isCut() && !asListed)
        return made;
    made.kept = true;
    made.stop = row->stop;
    made.stick = row->stick;
    made.shortPoint = row->shortPoint;
    made.longPoint = row->longPoint;
    made.differs = !asListed
        && !stillServes(piece, *row, toleranceFor(piece, job.prices, job.bench));
    return made;
}

int highestStop(const Table<CutPiece>& kept) {
    int highest = 0;
    for (const auto& [id, row] : kept)
        highest = std::max(highest, row.stop);
    return highest;
}

/// Sticks of the rack that somebody else has cut up since the sheet was listed: what was to come
/// out of them is given other sticks.
void letGoOfGoneOffcuts(std::vector<SheetPiece>& pieces, const SawJob& job) {
    using Kind = std::pair<Id<Profile>, Length>;
    struct Held {
        Kind kind;
        bool begun = false;
    };
    std::map<Kind, int> there;
    for (const StickOnHand& stick : job.sticks) {
        if (stick.fromRack)
            there[{stick.profile, stick.length}] += stick.count;
    }
    std::map<int, Held> held;
    for (const auto& [id, row] : job.kept) {
        if (row.fromRack && row.stick != 0) {
            Held& stick = held[row.stick];
            stick.kind = {row.profile, row.stickLength};
            stick.begun = stick.begun || row.state != PieceState::listed;
        }
    }
    for (const auto& [number, stick] : held)
        there[stick.kind] -= stick.begun ? 1 : 0;
    std::erase_if(held,
        [&](const auto& entry) { return entry.second.begun || there[entry.second.kind]-- > 0; });
    for (SheetPiece& piece : pieces) {
        if (piece.stick != 0 && held.contains(piece.stick)) {
            piece.stick = 0;
            piece.kept = false;
        }
    }
}

bool leans(const PieceEnd& end) {
    return end.cut == EndCut::miter || end.cut == EndCut::splice;
}

/// For each stop, which sticks are in the hand and what they have left afterwards.
class StickWalk {
public:
    StickWalk(const SawSheet& sheet, const Practice& practice)
        : m_sheet(sheet) {
        std::set<Id<Profile>> mitered;
        for (const SheetPiece& piece : sheet.pieces) {
            if (leans(piece.piece.left) || leans(piece.piece.right))
                mitered.insert(piece.piece.profile);
        }
        for (const SheetStick& stick : sheet.sticks) {
            Hand& hand = m_hands[stick.number];
            hand.left = stick.length - std::max(practice.endTrim, Length()) - stick.gone;
            hand.begun = stick.gone > Length();
            hand.kerf = kerfTaken(practice.kerf, mitered.contains(stick.profile));
        }
    }

    std::vector<StickUse> at(const SheetStop& stop) {
        std::map<int, StickUse> uses;
        for (const std::size_t place : stop.pieces) {
            const SheetPiece& piece = m_sheet.pieces[place];
            if (piece.stick == 0)
                continue;
            Hand& hand = m_hands[piece.stick];
            StickUse& use = uses[piece.stick];
            use.stick = piece.stick;
            use.takenUp = use.takenUp || !hand.begun;
            hand.begun = true;
            hand.left -= piece.longPoint + hand.kerf;
            use.left = std::max(hand.left, Length());
            ++use.pieces;
        }
        std::vector<StickUse> list;
        for (const auto& [number, use] : uses)
            list.push_back(use);
        return list;
    }

private:
    struct Hand {
        Length left;
        Length kerf;
        bool begun = false;
    };

    const SawSheet& m_sheet;
    std::map<int, Hand> m_hands;
};

void sayDifferences(SawSheet& sheet, const SawJob& job) {
    const LengthStyle style = job.prices.shop().lengths();
    for (const SheetPiece& piece : sheet.pieces) {
        if (piece.differs)
            sheet.problems.push_back(piece.piece.source.name + " " + piece.piece.key.part
                + " was cut at " + formatLengthWithUnit(piece.shortPoint, style)
                + "; the opening now wants " + formatLengthWithUnit(piece.piece.shortPoint, style)
                + ". Fit it, or mark it spoiled to cut another.");
    }
}

} // namespace

const SheetStop* SawSheet::stop(int number) const {
    const auto it = std::ranges::find(stops, number, &SheetStop::number);
    return it == stops.end() ? nullptr : &*it;
}

const SheetStick* SawSheet::stick(int number) const {
    const auto it = std::ranges::find(sticks, number, &SheetStick::number);
    return it == sticks.end() ? nullptr : &*it;
}

SawSheet sawSheet(const SawJob& job) {
    SawSheet sheet;
    const auto rows = liveRows(job.kept);
    sheet.pieces.reserve(job.pieces.size());
    for (const SawPiece& piece : job.pieces) {
        const auto row = rows.find(piece.key);
        sheet.pieces.push_back(onSheet(piece, row == rows.end() ? nullptr : row->second, job));
    }
    letGoOfGoneOffcuts(sheet.pieces, job);
    giveStops(sheet.pieces, job, highestStop(job.kept));
    const std::vector<SheetStick> given = giveSticks(sheet.pieces, job);
    sheet.stops = stopsOf(sheet.pieces, job.whole);
    sheet.sticks = sticksOf(sheet.pieces, given, job);
    StickWalk walk(sheet, job.prices.practice());
    for (SheetStop& stop : sheet.stops)
        stop.sticks = walk.at(stop);
    sheet.problems = shortages(sheet.pieces, job.prices);
    sayDifferences(sheet, job);
    return sheet;
}

Length toleranceFor(const SawPiece& piece, const PriceBook& prices, const Bench& bench) {
    const Profile* profile = prices.profile(piece.profile);
    return piece.ofOpening && profile ? bench.tolerance(profile->finish) : Length();
}

} // namespace miterbook
