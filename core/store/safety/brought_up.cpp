// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/safety/brought_up.h"

namespace miterbook {

namespace {

/// Step 9 gave each extra what its lines say of its material.
bool lacksOnlyMaterial(const AnyRow& journalled, const AnyRow& now) {
    const auto* before = journalled.as<Extra>();
    const auto* after = now.as<Extra>();
    if (!before || !after || before->material != Money())
        return false;
    Extra without = *after;
    without.material = Money();
    return without == *before;
}

} // namespace

bool isAsJournalled(const AnyRow& journalled, const AnyRow& now) {
    return journalled == now || lacksOnlyMaterial(journalled, now);
}

} // namespace miterbook
