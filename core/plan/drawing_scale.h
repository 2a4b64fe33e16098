// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/result.h"
#include "plan/sheets.h"

#include <string_view>

namespace miterbook {

/// How many times larger the house is than its drawing, from what stands below one: `1/4" = 1'`,
/// `1/8 = 1'-0"`, `1/4` (of an inch to the foot), `1:50`. Errors: a sentence quoting the text.
Result<double> parseDrawingScale(std::string_view text);

/// The sheet made so much larger or smaller that two points of the plan lie `known` apart on it;
/// the first stays where it is. Errors: two points in one place, or a scale that is no drawing's.
Result<Underlay> scaledTo(Underlay underlay, PlanPoint a, PlanPoint b, Length known);

/// The sheet turned about a point of the plan, degrees clockwise.
Underlay turnedAbout(Underlay underlay, PlanPoint about, Angle by);

} // namespace miterbook
