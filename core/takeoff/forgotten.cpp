// SPDX-License-Identifier: GPL-3.0-or-later
#include "takeoff/forgotten.h"

#include "takeoff/forgotten_openings.h"
#include "takeoff/forgotten_rooms.h"

namespace miterbook {

std::vector<Remark> forgotten(const WholePlan& plan, const PriceBook& prices) {
    Tally tally(plan, prices);
    for (const Opening& opening : plan.openings)
        lookAtOpening(opening, tally);
    lookAtMarks(tally);
    lookAtRooms(tally);
    lookAtClosets(tally);
    lookAtLevels(tally);
    return tally.take().remarks;
}

} // namespace miterbook
