// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "hours/earned_value.h"
#include "hours/work_bid.h"

#include <vector>

namespace miterbook {

/// How the share done of a piece of work is known; what is counted, later in the list, is better
/// than what was said.
enum class DoneBy { unknown, said, units, ticks, finished };

template <>
struct Words<DoneBy> {
    static constexpr std::array list{Word{DoneBy::unknown, "not known"}, Word{DoneBy::said, "said"},
        Word{DoneBy::units, "units finished"}, Word{DoneBy::ticks, "pieces hung"},
        Word{DoneBy::finished, "house finished"}};
};

/// A share done that is known otherwise than by the units of the time entries.
struct DoneSaid {
    PieceOfWork work = PieceOfWork::doors;
    Percent done;
    DoneBy by = DoneBy::said;
};

/// One piece of work while its house is open.
struct WorkProgress {
    PieceOfWork work = PieceOfWork::doors;
    Hours bid;
    Hours used;
    Quantity unitsBid;
    Quantity unitsDone;
    Percent done; ///< 0 to 100 %
    DoneBy by = DoneBy::unknown;
    Hours forecast;                                   ///< at completion
    Hours variance() const { return bid - forecast; } ///< negative: more than was bid
    bool over() const { return forecast > bid; }

    bool operator==(const WorkProgress&) const = default;
};

/// A house's hours against its bid, and what they do to its profit.
struct HouseProgress {
    std::vector<WorkProgress> works; ///< those bid, in bid order, then others that took time
    Hours lost;                      ///< waiting and callbacks, which nobody bids
    Hours bid;
    Hours used;                     ///< with what is lost
    Hours forecast;                 ///< with what is lost
    Percent done;                   ///< by bid hours
    std::vector<std::string> notes; ///< more finished than was bid, and the like

    Hours variance() const { return bid - forecast; }
    /// What the forecast takes from the profit (or adds to it, negative) at a crew rate.
    Money profitLost(Money crewRate) const;
    bool operator==(const HouseProgress&) const = default;
};

/// Holds a house's entries against its bid. The share done of a piece of work is its ticks, else
/// units finished / units bid (at most 100 %), else what was said. Forecast of a piece of work:
/// its bid hours by CPI so far once a tenth is done, else as bid; with an unknown share the larger
/// of bid and used; what is done took what it took.
HouseProgress houseProgress(const std::vector<WorkBid>& bids, const std::vector<TimeEntry>& entries,
    const std::vector<DoneSaid>& said = {});

/// The same once the house is finished: all of it is done, and took what it took.
void finishProgress(HouseProgress& house);

/// A house on the first screen: how it stands.
struct HouseTrouble {
    Id<House> house;
    Money profitLost; ///< forecast; positive is trouble
    Hours over;       ///< forecast over bid
};

/// The houses in trouble first: most profit lost on top, ties by house.
void troubleFirst(std::vector<HouseTrouble>& houses);

} // namespace miterbook
