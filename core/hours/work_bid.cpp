// SPDX-License-Identifier: GPL-3.0-or-later
#include "hours/work_bid.h"

namespace miterbook {

std::vector<WorkBid> workBids(const Estimate& estimate) {
    std::vector<WorkBid> bids;
    for (const WorkTotal& total : estimate.works) {
        WorkBid bid{total.work, total.hours, total.labour, {}, total.foreseen(), total.price};
        for (const EstimateLine& line : estimate.lines) {
            if (line.work == total.work && countsAsDone(line.task)
                && unitOf(line.task) == doneUnit(line.work))
                bid.units += line.quantity;
        }
        bids.push_back(bid);
    }
    return bids;
}

Money crewRateIn(const std::vector<WorkBid>& bids) {
    Money labour;
    Hours hours;
    for (const WorkBid& bid : bids) {
        labour += bid.labour;
        hours += bid.hours;
    }
    return hours > Hours()
        ? Money::cents(roundedQuotient(Wide(labour.cents()) * 60, hours.minutes()))
        : Money();
}

} // namespace miterbook
