// SPDX-License-Identifier: GPL-3.0-or-later
#include "job/figure_changes.h"

#include <algorithm>

namespace miterbook {

bool alterFigures(const std::vector<Change>& changes) {
    return !std::ranges::all_of(changes, [](const Change& change) {
        return change.row().isAnyOf<Bench, Measure, CutPiece, SawTest, SawSpot>();
    });
}

} // namespace miterbook
