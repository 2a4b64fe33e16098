// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/figures.h"
#include "papers/paper.h"

namespace miterbook {

/// Thickness x width in the shop's style: `11/16 x 3 1/4`, `18 x 90 mm`; empty where neither is
/// known.
std::string sizeText(const Profile& profile, LengthStyle style);

/// "paint grade", "stain grade".
std::string gradeText(const Profile& profile);

/// Which profiles the takeoff uses and for which pieces of work: no quantities and no prices. In
/// the order of what they are run as, then by name. No rows where nothing is used.
PaperTable materialsTable(const Takeoff& takeoff, const PriceBook& prices);

} // namespace miterbook
