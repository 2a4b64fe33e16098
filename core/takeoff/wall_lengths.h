// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "takeoff/opening_trim.h"

#include <unordered_map>

namespace miterbook {

/// What one door or cased opening takes out of the base of a room.
struct DoorGap {
    int wall = 0; ///< from 1; 0 not said
    Length along; ///< from the wall's first corner to the middle; 0 not said
    Length width; ///< w + 2r + 2c where this side is cased, else w
};

/// The gaps of every room, gathered once for the whole plan.
class DoorGaps {
public:
    explicit DoorGaps(Tally& tally);
    /// The gaps of one room, in plan order.
    const std::vector<DoorGap>& of(Id<Room> room) const;

private:
    void addOther(const Opening& opening, Length width, const Tally& tally);

    std::unordered_map<Id<Room>, std::vector<DoorGap>> m_gaps;
};

/// A part of a wall along which a run goes on.
struct Stretch {
    Length length;
    int gaps = 0;           ///< openings in it that part it evenly: where they stand is not known
    bool fromCorner = true; ///< begins at the wall's first corner
    bool toCorner = true;   ///< ends at its far corner
};

/// What is left of one wall for a run: its stretches in order, none empty.
struct WallLength {
    std::vector<Stretch> stretches;

    Length net() const;
};

/// A wall all along which the run goes.
WallLength wholeWall(Length length);

/// The walls of a room for a run, and what could not be taken off them: sentences without the
/// room's name.
struct WallLengths {
    std::vector<WallLength> walls;
    std::vector<std::string> remarks;
};

/// What stands against the walls besides doors.
enum class Breaks { none, asSaid };

/// The walls with base, less doors in their places; those whose place is not said off the wall they
/// are said to stand in (else the longest); and with Breaks::asSaid less the room's base breaks,
/// those without a place off the longest walls. What one wall cannot give is taken from the others,
/// so that the sum is perimeter - deductions; remarks where that is not enough.
WallLengths wallsLessDoors(
    const Room& room, const std::vector<DoorGap>& gaps, Breaks breaks, const Tally& tally);

} // namespace miterbook
