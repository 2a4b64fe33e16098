// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "bid/bid_setup.h"
#include "bid/per_work.h"
#include "book/price_book.h"
#include "takeoff/takeoff.h"

#include <utility>
#include <vector>

namespace miterbook {

/// What the shop's piece prices cover in one bid: the tasks that have one, and with them the
/// material of the rooms and openings those tasks come from. Nothing when the bid goes by cost and
/// profit and no task the other way.
class Coverage {
public:
    Coverage(const Takeoff& takeoff, const PriceBook& prices, const BidSetup& setup);

    Half half(PieceOfWork work, const Source& source) const;
    Half half(Task task) const;

private:
    std::vector<Task> m_tasks;
    std::vector<std::pair<PieceOfWork, Origins>> m_rows; ///< sorted
};

} // namespace miterbook
