// SPDX-License-Identifier: GPL-3.0-or-later
#include "cut/opening_states.h"

#include <algorithm>

namespace miterbook {

UnitStates unitStates(const SawSheet& sheet) {
    UnitStates states;
    for (const SheetPiece& piece : sheet.pieces) {
        const auto [it, isNew] = states.try_emplace(
            {piece.piece.key.source, piece.piece.key.unit}, piece.state);
        it->second = std::min(it->second, piece.state);
    }
    return states;
}

OpeningStates openingStates(const SawSheet& sheet) {
    const UnitStates units = unitStates(sheet);
    OpeningStates rows;
    for (const auto& [key, state] : units) {
        RowState& row = rows[key.first];
        row.state = row.units == 0 ? state : std::min(row.state, state);
        ++row.units;
    }
    for (const auto& [key, state] : units) {
        RowState& row = rows[key.first];
        row.further += state > row.state ? 1 : 0;
    }
    return rows;
}

std::string stateText(const RowState& state) {
    std::string text(word(state.state));
    if (state.further > 0)
        text += ", " + std::to_string(state.further) + " of " + std::to_string(state.units)
            + " further";
    return text;
}

std::string_view stateMark(PieceState state) {
    switch (state) {
    case PieceState::cut:
        return "◑";
    case PieceState::assembled:
        return "◕";
    case PieceState::hung:
        return "●";
    case PieceState::listed:
    case PieceState::spoiled:
        break;
    }
    return "○";
}

} // namespace miterbook
