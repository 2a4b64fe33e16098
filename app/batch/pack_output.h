// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "io/pack_lists.h"
#include "packing/plan.h"

#include <string>
#include <vector>

namespace miterbook {

/// What was packed, and how long it took.
struct Packed {
    std::vector<PackStick> sticks;
    std::vector<PackPiece> pieces;
    packing::Solution solution;
    double seconds = 0;
};

/// {"cost": cents, "bound": cents, "proven": bool, "seconds": s, "salvage": cents, "short":
/// [{"length": inches, "count": n}], "sticks": [{"length": inches, "price": cents, "times": n,
/// "pieces": [inches,
/// ...]}]}; lengths as exact decimals of inches; cost is the sticks' prices less salvage.
std::string packJson(const Packed& packed);

/// The same to be read: a line for each pattern, then cost and bound.
std::string packText(const Packed& packed);

} // namespace miterbook
