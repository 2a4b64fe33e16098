// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/length_text.h"
#include "plan/room.h"

#include <string>
#include <string_view>
#include <vector>

namespace miterbook {

/// Reads a room's outline as it is typed:
///   `12' x 14'6`                 a rectangle
///   `14', 10', 6' ^ 4', 8', 14'` walls in order round the room; a comma is an inside corner,
///                                ^ an outside corner; the last wall meets the first inside
///                                (one or two walls cannot come round and are left open)
///   `12' .`                      a trailing point leaves the outline open (a lone wall)
///   `9' | 12', 5'`               | leaves a gap: the next wall does not meet this one
///   `4' @135 no base no crown`   the angle at the wall's far corner where it is not 90; a wall
///                                without base or crown; `no shoe` has base alone
/// The comma parts walls here and is never a decimal mark. No text is no walls.
/// Errors: a sentence naming the wall that cannot be read.
Result<std::vector<Wall>> parseWalls(std::string_view text, LengthUnit bareUnit);

/// The outline in the same form, shortest way: a rectangle of four inside corners as `w x d`.
std::string formatWalls(const std::vector<Wall>& walls, LengthStyle style);

/// Sum of all walls.
Length perimeter(const std::vector<Wall>& walls);

} // namespace miterbook
