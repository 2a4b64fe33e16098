// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "stages/plan/drawing/drawn_level.h"

namespace miterbook {

// What is done to rooms with the pointer or keys on the drawing, each one edit. Rows go where the
// target says. Errors: the sentence that the user reads.

/// A new room with an outline.
Result<Edit> roomAdded(const DrawnLevel& level, IdSource& ids, const Outline& outline);
/// A room drawn anew; its openings stay where they stand.
Result<Edit> roomReshaped(
    const DrawnLevel& level, IdSource& ids, std::int64_t room, const Outline& outline);
/// A room named, its use by its name; or, where walls are typed (`12' x 14'`), drawn by them.
Result<Edit> roomSaid(
    const DrawnLevel& level, IdSource& ids, std::int64_t room, const std::string& typed);
/// Base, crown or shoe of one wall on or off.
enum class WallRunKind { base, crown, shoe };
Result<Edit> wallSwitched(
    const DrawnLevel& level, IdSource& ids, std::int64_t room, std::size_t wall, WallRunKind run);
/// Cabinets and the like against a wall; one that lies over another of its kind takes its place.
Result<Edit> breakAdded(
    const DrawnLevel& level, IdSource& ids, std::int64_t room, const BaseBreak& what);
Result<Edit> breaksCleared(const DrawnLevel& level, IdSource& ids, std::int64_t room);

/// Everything selected moved by a way; openings go with their rooms.
Result<Edit> itemsMoved(
    const DrawnLevel& level, IdSource& ids, const std::vector<DrawnItem>& items, PlanPoint by);
/// Rooms with their openings, counted work and stairs once more beside themselves.
Result<Edit> itemsCopied(
    const DrawnLevel& level, IdSource& ids, const std::vector<DrawnItem>& items, PlanPoint by);
/// Everything selected taken away; openings of a room that goes stay in the tables without a room.
Result<Edit> itemsRemoved(
    const DrawnLevel& level, IdSource& ids, const std::vector<DrawnItem>& items);

/// All levels of the plan built left for right, marks and hands with them.
Result<Edit> planMirrored(const DrawnLevel& level, IdSource& ids);
/// The level once more as a new one above, with its rooms, openings, closets, walls and other work.
Result<Edit> levelRepeated(const DrawnLevel& level, IdSource& ids);
/// Rooms that are typed and closed but not drawn, laid out below what is drawn.
Result<Edit> typedRoomsLaidOut(const DrawnLevel& level, IdSource& ids);

} // namespace miterbook
