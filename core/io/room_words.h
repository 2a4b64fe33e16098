// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "plan/fittings.h"
#include "plan/room.h"

#include <optional>
#include <string_view>

namespace miterbook {

/// What a room is used as, from its name: "Primary bath" is a bath; room for unknown words.
RoomUse useFromName(std::string_view name);

/// A finish that is not wood trim: "tile", "vinyl", "by others".
bool saysNoTrim(std::string_view text);

/// "as plan", "typical", "std".
bool saysAsPlan(std::string_view text);

/// What a closet column says: "shelf & rod", "double rod", "5 shelves".
struct ClosetWords {
    ClosetKind kind = ClosetKind::shelfAndRod;
    int shelves = 1; ///< 0: shelves whose number is not said
};
/// Nothing for unknown words.
std::optional<ClosetWords> closetWords(std::string_view text);

} // namespace miterbook
