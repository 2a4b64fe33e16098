// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "bid/estimate.h"
#include "job/edit.h"

namespace miterbook {

/// Whether the bid of a house has been kept as it was won.
bool hasSoldBid(const Book& book, Id<Plan> work);

/// Keeps an estimate as the bid that the house's own plan was won with, in place of one kept
/// before. The plan must be open.
void keepSoldBid(
    EditBuilder& edit, const Book& book, IdSource& ids, Id<Plan> work, const Estimate& estimate);

/// Puts a house with another stage into the edit, and what goes with it: its bid is kept when it is
/// won and let go when it is bid again; the day it was finished is noted when it is, and struck
/// when it is not. `estimate` is needed when needsEstimate(); the house's own plan must be open.
void putHouseStage(EditBuilder& edit, const Book& book, IdSource& ids, House house, Date today,
    const Estimate* estimate);

/// Whether a house that gets this stage needs its bid kept.
bool needsEstimate(const Book& book, const House& house);

} // namespace miterbook
