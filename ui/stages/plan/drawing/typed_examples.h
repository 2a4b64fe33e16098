// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/length_text.h"

namespace miterbook {

// What may be typed over the drawing, as shops of either kind would type it.

/// The two sides of a room.
constexpr const char* wallsExample(LengthUnit written) {
    return written == LengthUnit::millimetres ? "3650 x 4400" : "12' x 14'6";
}

/// An opening.
constexpr const char* sizeExample(LengthUnit written) {
    return written == LengthUnit::millimetres ? "900 x 1500" : "3068 or 36 x 60";
}

} // namespace miterbook
