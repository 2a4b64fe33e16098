// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "packing/instance.h"

namespace miterbook::packing {

// A coarser ruler for knapsack tables that would be too large with exact widths: everything
// rounded down to whole cells. Whatever fits also fits on the grid, so values found on it are
// bounds; what fits on the grid has to be measured again.
class Grid {
public:
    Grid(const Instance& instance, std::int64_t mostCells);

    bool exact() const { return m_cell == 1; }
    const Counts& widths() const { return m_widths; }
    std::int64_t capacity(std::int64_t exactCapacity) const { return exactCapacity / m_cell; }
    // Of all widths that come to this many cells.
    std::int64_t leastWidth(std::int64_t cells) const { return cells * m_cell; }

private:
    std::int64_t m_cell = 1;
    Counts m_widths;
};

} // namespace miterbook::packing
