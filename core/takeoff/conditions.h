// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "takeoff/tally.h"

namespace miterbook {

/// What a ceiling adds: 9 ft and over, 10 ft and over, or over 12 ft; only the one that applies.
void addCeiling(Conditions& conditions, Length ceiling);

/// Takes the ceiling's condition away: for work done from the floor.
void dropCeiling(Conditions& conditions);

/// Conditions of the place a source stands in: its room's ceiling (or its level's), an upper floor.
Conditions placeConditions(const Tally& tally, const Source& source);

/// Those of the place, and of the finish and material of a profile (which may be missing).
Conditions conditionsFor(const Tally& tally, const Source& source, const Profile* profile);

} // namespace miterbook
