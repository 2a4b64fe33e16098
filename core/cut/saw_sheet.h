// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "cut/cut_piece.h"
#include "cut/rack_move.h"
#include "cut/saw_pieces.h"
#include "cut/saw_supply.h"

#include <string>
#include <vector>

namespace miterbook {

/// A piece on the saw sheet: where its stop is set, which stick it comes out of, how far it is.
struct SheetPiece {
    SawPiece piece;
    int stop = 0;
    Length shortPoint; ///< as set
    Length longPoint;
    int stick = 0; ///< 0: no stick is left for it
    PieceState state = PieceState::listed;
    Id<CutPiece> row;     ///< in the book; none: never listed
    bool kept = false;    ///< stop and stick are as the row has them
    bool differs = false; ///< already cut, and the opening has since been measured otherwise

    bool isCut() const { return state != PieceState::listed; }
    bool operator==(const SheetPiece&) const = default;
};

/// A stick that is begun or to be taken up at one stop, and what it has left afterwards.
struct StickUse {
    int stick = 0;
    int pieces = 0;
    bool takenUp = false; ///< its first cut is here; else it waits in the rack
    Length left;

    bool operator==(const StickUse&) const = default;
};

/// One stop setting, set once.
struct SheetStop {
    int number = 0;
    Id<Level> level;
    Id<Profile> profile;
    Length setting; ///< short point
    Length offset;  ///< of the second stop: long point less short point
    PieceEnd left;  ///< ends of its pieces; a mirrored piece has them the other way round
    PieceEnd right;
    std::vector<std::size_t> pieces; ///< places in SawSheet::pieces
    std::vector<StickUse> sticks;
    int cut = 0; ///< how many of its pieces are

    bool isDone() const { return cut == static_cast<int>(pieces.size()); }
    bool operator==(const SheetStop&) const = default;
};

/// One stick and what is cut from it, long pieces first.
struct SheetStick {
    int number = 0;
    Id<Profile> profile;
    Length length;
    bool fromRack = false;
    std::vector<std::size_t> pieces;
    Length gone;         ///< taken, kerf included, by spoiled pieces and by what is off the plan
    Length left;         ///< when all its pieces are cut
    bool racked = false; ///< what is left lies in the rack

    bool operator==(const SheetStick&) const = default;
};

/// Everything to be cut for a house: stops by level and profile in descending order, sticks by
/// number. Each piece stands on it once.
struct SawSheet {
    std::vector<SheetPiece> pieces;
    std::vector<SheetStop> stops;
    std::vector<SheetStick> sticks;
    std::vector<std::string> problems; ///< sticks that lack, pieces cut that no longer fit

    const SheetStop* stop(int number) const;
    const SheetStick* stick(int number) const;
    bool operator==(const SawSheet&) const = default;
};

/// What the sheet is made from.
struct SawJob {
    const WholePlan& whole;
    const PriceBook& prices;
    const Bench& bench;
    const std::vector<SawPiece>& pieces;
    const std::vector<StickOnHand>& sticks;
    const Table<CutPiece>& kept;
    const Table<RackMove>& moves;
};

/// Makes the saw sheet. Pieces whose numbers are kept and that are still wanted as they were keep
/// stop and stick; what is new, measured again, or to be cut again for a spoiled one joins a stop
/// that serves it and the smallest drop it comes out of. Pure; the same rows give the same sheet.
SawSheet sawSheet(const SawJob& job);

/// Length that a piece may miss its wanted one by: by finish for openings, none for runs.
Length toleranceFor(const SawPiece& piece, const PriceBook& prices, const Bench& bench);

} // namespace miterbook
