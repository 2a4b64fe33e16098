// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "figures/figure_model.h"
#include "job/sent_bids.h"
#include "papers/compare_papers.h"

#include <QStringList>

#include <vector>

namespace miterbook {

/// The bids sent on a job, the latest first.
QStringList sentTitles();
std::vector<FigureRow> sentRows(const Book& book, const std::vector<SentBid>& bids);

/// Two papers line by line.
QStringList differenceTitles();
std::vector<FigureRow> differenceRows(const std::vector<PaperDifference>& differences);

/// What came of the shop's bids, by builder, with all of them last.
QStringList winTitles();
std::vector<FigureRow> winRows(const Book& book);

} // namespace miterbook
