// SPDX-License-Identifier: GPL-3.0-or-later
#include "packing/grid.h"

#include <algorithm>

namespace miterbook::packing {

Grid::Grid(const Instance& instance, std::int64_t mostCells) {
    const auto rows = static_cast<std::int64_t>(instance.kinds()) + 3;
    const std::int64_t most = std::max<std::int64_t>(mostCells / rows, 1000);
    m_cell = std::max<std::int64_t>(1, (instance.longestCapacity() + most - 1) / most);
    for (const std::int64_t width : instance.widths())
        m_widths.push_back(width / m_cell);
}

} // namespace miterbook::packing
