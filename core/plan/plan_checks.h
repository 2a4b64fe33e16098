// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/result.h"
#include "plan/plan_rows.h"

namespace miterbook {

/// Whether a check lets sizes, names and counts be missing: a row that is still being typed may
/// lack them, but what is there must be sensible.
enum class Missing { refused, allowed };

/// The longest side of an opening that is believed.
inline constexpr Length longestOpening = Length::feet(40);
/// How far a polygon's sides may miss meeting: they are typed to the sixteenth and whole degree.
inline constexpr Length polygonTolerance = Length::sixteenths(4);

/// Each check looks at one row alone. Errors: Fault::badInput and one sentence that names the row
/// and says what is wrong with it.
Result<void> checkLevel(const Level& level, Missing missing = Missing::refused);
Result<void> checkVariant(const Variant& variant);
Result<void> checkSwap(const Swap& swap);
Result<void> checkRoom(const Room& room, Missing missing = Missing::refused);
Result<void> checkOpening(const Opening& opening, Missing missing = Missing::refused);
Result<void> checkCloset(const Closet& closet, Missing missing = Missing::refused);
Result<void> checkStair(const Stair& stair, Missing missing = Missing::refused);
Result<void> checkTreatment(const WallTreatment& treatment, Missing missing = Missing::refused);
Result<void> checkOtherWork(const OtherWork& other);
Result<void> checkSheetFile(const SheetFile& file);
Result<void> checkUnderlay(const Underlay& underlay);
Result<void> checkDismissal(const Dismissal& dismissal);

/// Whether a polygon's inside angles sum to (n - 2) x 180 degrees and its sides come round to where
/// they began; `name` begins the sentence.
Result<void> checkPolygon(const std::vector<PolygonSide>& sides, const std::string& name);

/// Whether no other opening in the same plan and variant has the same mark. A row that replaces the
/// other shares its mark, and an empty mark is nobody's.
Result<void> checkMark(const Opening& opening, const PlanRows& rows);

/// The room's own wall of that number exists, for an opening that says it; openings of no room or
/// of a room not in `rows` say nothing.
Result<void> checkOpeningWall(const Opening& opening, const PlanRows& rows);

} // namespace miterbook
