// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/figures.h"

#include <string>

namespace miterbook {

/// What a piece of work comprises, in the words a builder reads: "18 windows cased: stool and apron
/// 12, picture frame 6". Counts, feet and names; never hours, rates or money.
std::string scopeWords(PieceOfWork work, const JobFigures& figures, const PriceBook& prices);

} // namespace miterbook
