// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/money.h"
#include "book/piece_of_work.h"

#include <map>
#include <vector>

namespace miterbook {

/// An amount for each piece of work.
using WorkMoney = std::map<PieceOfWork, Money>;

/// A weight for each piece of work: running length, cost.
using WorkWeights = std::map<PieceOfWork, std::int64_t>;

/// Splits an amount over pieces of work in proportion to weights, to the cent, and adds it to `to`.
/// Nothing when there are no weights.
void shareOver(WorkMoney& to, Money amount, const WorkWeights& weights);

/// The sum over all pieces of work.
Money sum(const WorkMoney& amounts);

} // namespace miterbook
