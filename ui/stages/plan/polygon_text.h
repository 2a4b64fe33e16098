// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/length_text.h"
#include "plan/opening.h"

#include <string>
#include <string_view>
#include <vector>

namespace miterbook {

/// Reads a polygon opening's sides as they are typed, clockwise from the lower left corner:
/// `30, 24 @135, 17, 24 @135`; an angle is the inside one at the side's far end, 90 where none is
/// said. A comma parts sides and is never a decimal mark. No text is no sides.
/// Errors: a sentence naming the side.
Result<std::vector<PolygonSide>> parseSides(std::string_view text, LengthUnit bareUnit);

std::string formatSides(const std::vector<PolygonSide>& sides, LengthStyle style);

} // namespace miterbook
