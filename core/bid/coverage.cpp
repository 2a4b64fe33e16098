// SPDX-License-Identifier: GPL-3.0-or-later
#include "bid/coverage.h"

#include <algorithm>

namespace miterbook {

Coverage::Coverage(const Takeoff& takeoff, const PriceBook& prices, const BidSetup& setup) {
    for (const auto& [id, price] : prices.of<PiecePrice>()) {
        if (wayOf(setup, price.task) == Pricing::piecePrices)
            m_tasks.push_back(price.task);
    }
    if (m_tasks.empty())
        return;
    for (const TaskCount& task : takeoff.tasks) {
        if (half(task.task) == Half::byPiece)
            m_rows.emplace_back(task.work, task.source.row);
    }
    std::ranges::sort(m_rows);
    const auto repeated = std::ranges::unique(m_rows);
    m_rows.erase(repeated.begin(), repeated.end());
}

Half Coverage::half(PieceOfWork work, const Source& source) const {
    if (m_rows.empty())
        return Half::byCost;
    return std::ranges::binary_search(m_rows, std::pair(work, source.row)) ? Half::byPiece
                                                                           : Half::byCost;
}

Half Coverage::half(Task task) const {
    return std::ranges::count(m_tasks, task) > 0 ? Half::byPiece : Half::byCost;
}

} // namespace miterbook
