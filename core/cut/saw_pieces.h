// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/table.h"
#include "cut/measured_opening.h"

#include <compare>

namespace miterbook {

/// Which piece of a house: the same before and after it is measured again.
struct PieceKey {
    std::int64_t source = 0; ///< id of the opening, room... it belongs to
    int unit = 1;            ///< which of the openings alike
    std::string part;
    int copy = 1; ///< which of the pieces alike

    auto operator<=>(const PieceKey&) const = default;
};

/// One piece to be cut for the house as measured.
struct SawPiece {
    PieceKey key;
    Source source; ///< its name says the unit: "W4.2"
    PieceOfWork work = PieceOfWork::windows;
    Id<Profile> profile;
    Length shortPoint; ///< as wanted
    Length longPoint;
    Length slack; ///< opposite readings want so much more and so much less
    PieceEnd left;
    PieceEnd right;
    bool ofOpening = false;
    bool measured = false;

    bool operator==(const SawPiece&) const = default;
};

/// The id behind a source's row.
std::int64_t idOfSource(const Source& source);

/// The measure of one unit of an opening; nullptr when it has not been measured.
const Measure* measureOf(const Table<Measure>& measures, Id<Opening> opening, int unit);

/// Every piece of the house: those of openings cut for what was measured, all others as the takeoff
/// has them. In plan order; each unit and each face of a wall on its own.
std::vector<SawPiece> sawPieces(const WholePlan& whole, const Takeoff& takeoff,
    const PriceBook& prices, const Table<Measure>& measures);

} // namespace miterbook
