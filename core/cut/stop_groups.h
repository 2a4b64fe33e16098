// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/length.h"

#include <cstddef>
#include <vector>

namespace miterbook {

/// Pieces that must come off one stop: the opposite sides of a frame, or a piece alone. Where the
/// sides were not measured alike, `least` and `most` are the lengths they would have each.
struct StopItem {
    Length least;
    Length most;

    static StopItem one(Length length) { return {length, length}; }
    bool operator==(const StopItem&) const = default;
};

/// One stop setting and the items that come off it.
struct StopGroup {
    Length setting;
    std::vector<std::size_t> items; ///< places in the list that was grouped

    bool operator==(const StopGroup&) const = default;
};

/// The fewest settings so that each item is within `tolerance` of its own: greedy interval
/// stabbing, which is optimal. An item whose sides differ by more than twice the tolerance keeps
/// its sides together in their middle. A setting lies in the middle of what it serves, moved to the
/// nearest multiple of `step` (0: left as it is) that still serves all. Longest setting first.
std::vector<StopGroup> groupStops(
    const std::vector<StopItem>& items, Length tolerance, Length step);

/// The place of the nearest of `settings` that serves an item within the tolerance, the longer of
/// two as near; `settings.size()` when none does.
std::size_t servingSetting(
    const std::vector<Length>& settings, const StopItem& item, Length tolerance);

/// How far a piece cut at `setting` moves each of the two reveals at its ends: half its error.
constexpr Length revealError(Length wanted, Length setting) {
    return (setting - wanted) / 2;
}

} // namespace miterbook
