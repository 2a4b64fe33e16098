// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/length_text.h"
#include "stages/plan/drawing/drawn_level.h"

namespace miterbook {

/// What the next opening that is placed shall be. Lengths of zero: as the last of its kind.
struct OpeningChoice {
    OpeningKind kind = OpeningKind::window;
    Size size;
    Length outsideWall; ///< thickness of walls with nothing behind them; zero: not said
};

/// An opening put into a wall. It is trimmed as the last of its kind; the room behind a door and
/// the thickness of the wall are those of the drawing.
Result<Edit> openingPlaced(const DrawnLevel& level, IdSource& ids, const OpeningChoice& choice,
    std::int64_t room, const WallPlace& place);
/// An opening that is there put into a wall, from another one or from the tables.
Result<Edit> openingMoved(const DrawnLevel& level, IdSource& ids, std::int64_t opening,
    std::int64_t room, const WallPlace& place);
/// An opening moved along its wall.
Result<Edit> openingNudged(const DrawnLevel& level, IdSource& ids, std::int64_t opening, Length by);
/// Another size; typed as `3068` or `36 x 60`.
Result<Edit> openingResized(
    const DrawnLevel& level, IdSource& ids, std::int64_t opening, const Size& size);

/// Where an opening stands on the drawing; none where it has no place.
struct PlacedOpening {
    const Room* room = nullptr;
    WallPlace place;
};
std::optional<PlacedOpening> placeOf(const DrawnLevel& level, const Opening& opening);

} // namespace miterbook
