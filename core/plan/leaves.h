// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "plan/opening.h"

namespace miterbook {

/// How what shuts an opening is drawn on a plan.
enum class Leaves { none, swing, pair, folding, sliding, pocket };

/// Wider than this, an outside door that is hung on neither side slides.
inline constexpr Length widestSwing = Length::inches(48);

constexpr Leaves leavesOf(const Opening& opening) {
    switch (opening.kind) {
    case OpeningKind::prehungDoor:
        return Leaves::swing;
    case OpeningKind::exteriorDoor:
        return opening.hand == Hand::none && opening.width > widestSwing ? Leaves::sliding
                                                                         : Leaves::swing;
    case OpeningKind::doubleDoor:
        return Leaves::pair;
    case OpeningKind::bifoldDoor:
        return Leaves::folding;
    case OpeningKind::bypassDoor:
        return Leaves::sliding;
    case OpeningKind::pocketDoor:
        return Leaves::pocket;
    case OpeningKind::window:
    case OpeningKind::casedOpening:
        break;
    }
    return Leaves::none;
}

} // namespace miterbook
