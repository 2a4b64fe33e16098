// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "hours/house_progress.h"
#include "job/cut_figures.h"

#include <vector>

namespace miterbook {

/// The share of its doors and windows of which every piece is ticked as hung; nothing for a piece
/// of work of which none is, since a shop may not tick at all.
std::vector<DoneSaid> hungShares(const CutFigures& cut);

/// What a house's hours are held against: its bid as it was won, else as it stands.
std::vector<WorkBid> bidOf(const Book& book, const JobFigures& figures);

} // namespace miterbook
