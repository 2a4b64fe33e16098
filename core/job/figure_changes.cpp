// SPDX-License-Identifier: GPL-3.0-or-later
#include "job/figure_changes.h"

#include <algorithm>

namespace miterbook {

namespace {

template <class... Rows>
bool isOneOf(const AnyRow& row) {
    return (std::holds_alternative<Rows>(row) || ...);
}

} // namespace

bool alterFigures(const std::vector<Change>& changes) {
    return !std::ranges::all_of(changes, [](const Change& change) {
        return isOneOf<Bench, Measure, CutPiece, SawTest, SawSpot>(change.row());
    });
}

} // namespace miterbook
