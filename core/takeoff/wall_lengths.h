// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "takeoff/opening_trim.h"

#include <unordered_map>

namespace miterbook {

/// What one door or cased opening takes out of the base of a room.
struct DoorGap {
    int wall = 0; ///< from 1; 0 not said
    Length width; ///< w + 2r + 2c where this side is cased, else w
};

/// The gaps of every room, gathered once for the whole plan.
class DoorGaps {
public:
    explicit DoorGaps(Tally& tally);
    /// The gaps of one room, in plan order.
    const std::vector<DoorGap>& of(Id<Room> room) const;

private:
    std::unordered_map<Id<Room>, std::vector<DoorGap>> m_gaps;
};

/// What is left of one wall for a run.
struct WallLength {
    Length net;
    int gaps = 0; ///< openings that part the run
};

/// The walls of a room for a run, and what could not be taken off them: sentences without the
/// room's name.
struct WallLengths {
    std::vector<WallLength> walls;
    std::vector<std::string> remarks;
};

/// The walls with base, less doors on the wall they are said to stand in (else the longest) and
/// less `elsewhere` (cabinets and the like, off the longest walls). What one wall cannot give is
/// taken from the others, so that the sum is perimeter - deductions; remarks where that is not
/// enough.
WallLengths wallsLessDoors(
    const Room& room, const std::vector<DoorGap>& gaps, Length elsewhere, const Tally& tally);

} // namespace miterbook
