// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "takeoff/wall_lengths.h"

namespace miterbook {

/// One profile running along the walls of one room.
struct WallRun {
    PieceOfWork work = PieceOfWork::base;
    std::string_view label; ///< "base"
    Source source;
    Id<Profile> profile;
    const Profile* stock = nullptr; ///< the profile in the book
};

/// Counts the pieces of a run, wall by wall, and its corners. `lengths` has one entry for each wall
/// of the room, without a stretch where the run leaves it out; `extra` runs along no wall (an
/// island's back). Returns the running length without splices and waste.
Length takeWallRun(const WallRun& run, const Room& room, const std::vector<WallLength>& lengths,
    Length extra, Tally& tally);

} // namespace miterbook
