// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/fields.h"
#include "basics/id.h"
#include "basics/length.h"
#include "book/profile.h"
#include "plan/plan.h"

#include <string>

namespace miterbook {

/// How far a piece has come. A spoiled one keeps what it took of its stick; another is cut for it.
enum class PieceState { listed, cut, assembled, hung, spoiled };

template <>
struct Words<PieceState> {
    static constexpr std::array list{
        Word{PieceState::listed, "to cut"},
        Word{PieceState::cut, "cut"},
        Word{PieceState::assembled, "assembled"},
        Word{PieceState::hung, "hung"},
        Word{PieceState::spoiled, "spoiled"},
    };
};

/// One piece as it stands on the saw sheet that hangs at the saw: once cutting has begun its
/// numbers are kept, so that what is cut later agrees with what is written there.
struct CutPiece {
    Id<CutPiece> id;
    Id<Plan> plan;
    std::int64_t source = 0; ///< id of the opening, room... it belongs to; that row may be gone
    int unit = 1;            ///< which of the openings alike, from 1
    std::string part;        ///< "head", "left leg"
    int copy = 1;            ///< which of the pieces alike (the other face of the wall), from 1
    Id<Profile> profile;
    int stop = 0;      ///< number of its setting on the sheet
    Length wanted;     ///< short point that it should have had when it was listed
    Length shortPoint; ///< as set
    Length longPoint;
    int stick = 0; ///< number of the stick; 0: none was left
    Length stickLength;
    bool fromRack = false; ///< that stick is an offcut
    PieceState state = PieceState::listed;

    bool operator==(const CutPiece&) const = default;
};

template <>
struct Describe<CutPiece> {
    static constexpr std::string_view table = "cut_piece";
    static constexpr std::string_view noun = "piece on the saw sheet";
    static constexpr void allFields(auto&& take) {
        take(field("id", &CutPiece::id), field("plan", &CutPiece::plan),
            field("source", &CutPiece::source), field("unit", &CutPiece::unit),
            field("part", &CutPiece::part), field("copy", &CutPiece::copy),
            field("profile", &CutPiece::profile), field("stop", &CutPiece::stop),
            field("wanted", &CutPiece::wanted), field("short_point", &CutPiece::shortPoint),
            field("long_point", &CutPiece::longPoint), field("stick", &CutPiece::stick),
            field("stick_length", &CutPiece::stickLength), field("from_rack", &CutPiece::fromRack),
            field("state", &CutPiece::state));
    }
};

} // namespace miterbook
