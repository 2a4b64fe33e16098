// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/result.h"
#include "cut/saw_sheet.h"

#include <optional>
#include <string_view>
#include <vector>

namespace miterbook {

// What happens at saw, bench and opening, as rows to put into the book. Places are those of
// SawSheet::pieces.

/// The rows that bring pieces to a state. The first time that anything of a level and profile is
/// touched, all its pieces are listed with the numbers on the sheet, which then stay.
std::vector<CutPiece> ticked(const SawSheet& sheet, const std::vector<std::size_t>& pieces,
    PieceState state, Id<Plan> plan, const Table<CutPiece>& kept, IdSource& ids);

/// The rows that keep the numbers of a whole sheet (one level, or all where it is none), so that a
/// printed sheet and the screen go on agreeing.
std::vector<CutPiece> listed(const SawSheet& sheet, Id<Level> level, Id<Plan> plan,
    const Table<CutPiece>& kept, IdSource& ids);

/// Pieces of one opening's unit, or of a room...: what is known by its name on paper.
std::vector<std::size_t> piecesOf(const SawSheet& sheet, std::int64_t source, int unit);
/// Pieces of a stop; of a stick.
std::vector<std::size_t> piecesAtStop(const SawSheet& sheet, int stop);
std::vector<std::size_t> piecesOfStick(const SawSheet& sheet, int stick);

/// How far an opening's unit, or a room, is: as far as the piece that is least far. Nothing where
/// it has no pieces.
std::optional<PieceState> stateOf(const SawSheet& sheet, std::int64_t source, int unit);

/// What the number or name somebody types means: "12" a stop, "stick 7" (or "s7") a stick, "W4" an
/// opening or room by name, "D1 face 2" one side of its wall. Error: a sentence when nothing on the
/// sheet is called so.
Result<std::vector<std::size_t>> piecesCalled(const SawSheet& sheet, std::string_view typed);

/// What is typed from a paper: a name, and how far it is. "12" and "W4" are cut, "W4 hung" is hung.
struct TypedTick {
    std::vector<std::size_t> pieces;
    PieceState state = PieceState::cut;
};
Result<TypedTick> typedTick(const SawSheet& sheet, std::string_view typed);

/// Of pieces those that a tick may bring to a state: only what was cut can be spoiled, and what is
/// made up is not cut anew.
std::vector<std::size_t> tickable(
    const SawSheet& sheet, std::vector<std::size_t> pieces, PieceState state);

/// Remainders worth keeping: of sticks of which everything is cut, at least `keep` long.
struct Drop {
    int stick = 0;
    Id<Profile> profile;
    Length length;
};
std::vector<Drop> dropsOf(const SawSheet& sheet, Length keep);

} // namespace miterbook
