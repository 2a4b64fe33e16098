// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/length.h"

namespace miterbook {

/// Feet of bead that one tube gives: volume over the area of a square bead. A US fluid ounce is
/// 1.8047 cubic inches; 10.1 oz at 1/4 in gives 24.3 ft. Ounces and bead must be positive.
constexpr double feetPerTube(double ounces, Length bead) {
    constexpr double cubicInchesPerOunce = 1.8047;
    return ounces * cubicInchesPerOunce / (12.0 * bead.toInches() * bead.toInches());
}

} // namespace miterbook
