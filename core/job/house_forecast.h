// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "hours/house_progress.h"
#include "job/cut_figures.h"

#include <vector>

namespace miterbook {

/// What a house's hours are held against.
struct HouseBid {
    std::vector<WorkBid> works;
    Money crewRate; ///< burdened, an hour, as in this bid

    bool operator==(const HouseBid&) const = default;
};

/// A bid as it was won.
HouseBid wonBid(std::vector<WorkBid> works);
/// The bid of a house: as it was won, else as it stands.
HouseBid houseBid(const Book& book, const JobFigures& figures);

/// The share of its doors and windows of which every piece is ticked as hung; nothing for a piece
/// of work of which none is, since a shop may not tick at all.
std::vector<DoneSaid> hungShares(const CutFigures& cut);
/// The same from an opened job's figures; in no time where nothing is ticked.
std::vector<DoneSaid> hungShares(const Book& book, const JobFigures& figures);

/// How a house stands and what it will come to: its time against its bid, with what is hung and
/// what was said to be done; a finished house took what it took. The one forecast of every screen
/// and paper.
HouseProgress houseForecast(
    const Book& book, const House& house, const HouseBid& bid, const std::vector<DoneSaid>& hung);

} // namespace miterbook
