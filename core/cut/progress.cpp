// SPDX-License-Identifier: GPL-3.0-or-later
#include "cut/progress.h"

#include "basics/blank.h"
#include "basics/letters.h"
#include "basics/quote.h"

#include <algorithm>
#include <charconv>
#include <set>

namespace miterbook {

namespace {

CutPiece rowOf(const SheetPiece& piece, const SawSheet& sheet, Id<Plan> plan, IdSource& ids) {
    CutPiece row;
    row.id = piece.row ? piece.row : ids.next<CutPiece>();
    row.plan = plan;
    row.source = piece.piece.key.source;
    row.unit = piece.piece.key.unit;
    row.part = piece.piece.key.part;
    row.copy = piece.piece.key.copy;
    row.profile = piece.piece.profile;
    row.stop = piece.stop;
    row.wanted = piece.piece.shortPoint;
    row.shortPoint = piece.shortPoint;
    row.longPoint = piece.longPoint;
    row.stick = piece.stick;
    if (const SheetStick* stick = sheet.stick(piece.stick)) {
        row.stickLength = stick->length;
        row.fromRack = stick->fromRack;
    }
    row.state = piece.state;
    return row;
}

/// A kept piece's row stands as it is; what it was listed for stays too.
CutPiece present(const SheetPiece& piece, const SawSheet& sheet, Id<Plan> plan,
    const Table<CutPiece>& kept, IdSource& ids) {
    const CutPiece* row = piece.kept ? kept.find(piece.row) : nullptr;
    return row ? *row : rowOf(piece, sheet, plan, ids);
}

/// The whole number that a text is; nothing when it is none.
std::optional<int> wholeNumber(std::string_view text) {
    int number = 0;
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), number);
    if (text.empty() || error != std::errc() || end != text.data() + text.size())
        return std::nullopt;
    return number;
}

/// "d1 face 2": the name, and which face of the wall; 0 where none is said.
std::pair<std::string, int> withFace(const std::string& name) {
    constexpr std::string_view word = " face ";
    const std::size_t at = name.rfind(word);
    if (at == std::string::npos)
        return {name, 0};
    const auto face = wholeNumber(trimmed(std::string_view(name).substr(at + word.size())));
    return face && *face > 0 ? std::pair(name.substr(0, at), *face) : std::pair(name, 0);
}

template <class Is>
std::vector<std::size_t> piecesThat(const SawSheet& sheet, Is is) {
    std::vector<std::size_t> found;
    for (std::size_t i = 0; i < sheet.pieces.size(); ++i) {
        if (is(sheet.pieces[i]))
            found.push_back(i);
    }
    return found;
}

} // namespace

std::vector<CutPiece> ticked(const SawSheet& sheet, const std::vector<std::size_t>& pieces,
    PieceState state, Id<Plan> plan, const Table<CutPiece>& kept, IdSource& ids) {
    std::set<std::pair<Id<Level>, Id<Profile>>> begun;
    std::set<std::size_t> wanted(pieces.begin(), pieces.end());
    for (const std::size_t at : pieces)
        begun.emplace(sheet.pieces[at].piece.source.level, sheet.pieces[at].piece.profile);
    std::vector<CutPiece> rows;
    for (std::size_t i = 0; i < sheet.pieces.size(); ++i) {
        const SheetPiece& piece = sheet.pieces[i];
        const bool touched = wanted.contains(i);
        const bool listedNow = !piece.kept
            && begun.contains({piece.piece.source.level, piece.piece.profile});
        if (!touched && !listedNow)
            continue;
        CutPiece row = present(piece, sheet, plan, kept, ids);
        if (touched)
            row.state = state;
        rows.push_back(std::move(row));
    }
    return rows;
}

std::vector<CutPiece> listed(const SawSheet& sheet, Id<Level> level, Id<Plan> plan,
    const Table<CutPiece>& kept, IdSource& ids) {
    std::vector<CutPiece> rows;
    for (const SheetPiece& piece : sheet.pieces) {
        if (!piece.kept && (!level || piece.piece.source.level == level))
            rows.push_back(present(piece, sheet, plan, kept, ids));
    }
    return rows;
}

std::vector<std::size_t> piecesOf(const SawSheet& sheet, std::int64_t source, int unit) {
    return piecesThat(sheet, [&](const SheetPiece& piece) {
        return piece.piece.key.source == source && piece.piece.key.unit == unit;
    });
}

std::vector<std::size_t> piecesAtStop(const SawSheet& sheet, int stop) {
    return piecesThat(sheet, [&](const SheetPiece& piece) { return piece.stop == stop; });
}

std::vector<std::size_t> piecesOfStick(const SawSheet& sheet, int stick) {
    return piecesThat(
        sheet, [&](const SheetPiece& piece) { return stick != 0 && piece.stick == stick; });
}

std::optional<PieceState> stateOf(const SawSheet& sheet, std::int64_t source, int unit) {
    std::optional<PieceState> least;
    for (const std::size_t at : piecesOf(sheet, source, unit)) {
        const PieceState state = sheet.pieces[at].state;
        least = least ? std::min(*least, state) : state;
    }
    return least;
}

Result<std::vector<std::size_t>> piecesCalled(const SawSheet& sheet, std::string_view typed) {
    const std::string name = lowered(trimmed(typed));
    std::vector<std::size_t> found;
    if (const auto stop = wholeNumber(name))
        found = piecesAtStop(sheet, *stop);
    const std::string_view afterStick = name.starts_with("stick")
        ? trimmed(std::string_view(name).substr(5))
        : name.starts_with("s") ? std::string_view(name).substr(1)
                                : std::string_view();
    if (const auto stick = wholeNumber(afterStick); found.empty() && stick)
        found = piecesOfStick(sheet, *stick);
    if (found.empty() && !name.empty())
        found = piecesThat(sheet,
            [&](const SheetPiece& piece) { return lowered(piece.piece.source.name) == name; });
    if (const auto [opening, face] = withFace(name); found.empty() && face > 0)
        found = piecesThat(sheet, [&, face = face, &opening = opening](const SheetPiece& piece) {
            return piece.piece.ofOpening && piece.piece.key.copy == face
                && lowered(piece.piece.source.name) == opening;
        });
    if (found.empty())
        return Error{Fault::notFound,
            "Nothing on the saw sheet is called " + inQuotes(typed)
                + ": type the number of a stop, \"stick\" and its number, or an opening's mark."};
    return found;
}

Result<TypedTick> typedTick(const SawSheet& sheet, std::string_view typed) {
    TypedTick tick;
    std::string_view name = trimmed(typed);
    const std::string said = lowered(name);
    for (const PieceState state :
        {PieceState::cut, PieceState::assembled, PieceState::hung, PieceState::spoiled}) {
        const std::string ending = " " + std::string(word(state));
        if (said.ends_with(ending)) {
            tick.state = state;
            name.remove_suffix(ending.size());
            break;
        }
    }
    auto pieces = piecesCalled(sheet, name);
    if (!pieces)
        return pieces.error();
    tick.pieces = tickable(sheet, std::move(*pieces), tick.state);
    return tick;
}

std::vector<std::size_t> tickable(
    const SawSheet& sheet, std::vector<std::size_t> pieces, PieceState state) {
    std::erase_if(pieces, [&](std::size_t at) {
        const PieceState present = sheet.pieces[at].state;
        return state == PieceState::spoiled ? present == PieceState::listed
            : state == PieceState::cut      ? present > PieceState::cut
                                            : false;
    });
    return pieces;
}

std::vector<Drop> dropsOf(const SawSheet& sheet, Length keep) {
    std::vector<Drop> drops;
    for (const SheetStick& stick : sheet.sticks) {
        const bool cut = std::ranges::all_of(
            stick.pieces, [&](std::size_t at) { return sheet.pieces[at].isCut(); });
        const bool used = !stick.pieces.empty() || stick.gone > Length();
        if (cut && used && !stick.racked && stick.left >= keep && stick.left > Length())
            drops.push_back({stick.number, stick.profile, stick.left});
    }
    return drops;
}

} // namespace miterbook
