// SPDX-License-Identifier: GPL-3.0-or-later
#include "takeoff/forgotten.h"

#include "takeoff/forgotten_openings.h"
#include "takeoff/forgotten_places.h"
#include "takeoff/forgotten_rooms.h"

#include <algorithm>

namespace miterbook {

std::vector<Remark> forgotten(const WholePlan& plan, const PriceBook& prices) {
    Tally tally(plan, prices);
    for (const Opening& opening : plan.openings)
        lookAtOpening(opening, tally);
    lookAtMarks(tally);
    lookAtRooms(tally);
    lookAtClosets(tally);
    lookAtLevels(tally);
    lookAtPlaces(tally);
    return tally.take().remarks;
}

std::vector<Remark> standing(std::vector<Remark> remarks, const Table<Dismissal>& dismissals) {
    std::erase_if(remarks, [&](const Remark& remark) {
        return remark.weight != Remark::Weight::problem
            && std::ranges::any_of(dismissals,
                [&](const auto& entry) { return entry.second.sentence == remark.sentence; });
    });
    return remarks;
}

} // namespace miterbook
