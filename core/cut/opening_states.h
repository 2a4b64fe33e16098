// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "cut/saw_sheet.h"

#include <map>
#include <string>
#include <string_view>
#include <utility>

namespace miterbook {

/// How far each unit of an opening (or a room...) is, by its row's id and the unit's number: as far
/// as the piece that is least far. What has no pieces is not in it.
using UnitStates = std::map<std::pair<std::int64_t, int>, PieceState>;
UnitStates unitStates(const SawSheet& sheet);

/// How far all units of one row are.
struct RowState {
    PieceState state = PieceState::listed; ///< of the unit that is least far
    int units = 0;
    int further = 0; ///< units that are further than that

    bool operator==(const RowState&) const = default;
};
/// By the id of the opening (or room...).
using OpeningStates = std::map<std::int64_t, RowState>;
OpeningStates openingStates(const SawSheet& sheet);

/// "cut"; "to cut, 2 of 3 further" where openings alike are not equally far.
std::string stateText(const RowState& state);
/// A sign for a plan or a narrow column: a circle that fills up, told by its shape and not by
/// colour.
std::string_view stateMark(PieceState state);

} // namespace miterbook
