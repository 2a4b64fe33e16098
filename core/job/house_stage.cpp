// SPDX-License-Identifier: GPL-3.0-or-later
#include "job/house_stage.h"

#include <algorithm>

namespace miterbook {

namespace {

void removeSoldBid(EditBuilder& edit, const Book& book, Id<Plan> work) {
    for (const auto& [id, sold] : book.jobs.of<SoldWork>()) {
        if (sold.plan == work)
            edit.remove(id);
    }
    for (const auto& [id, sold] : book.sheet(work).of<SoldTask>())
        edit.remove(id);
}

} // namespace

bool hasSoldBid(const Book& book, Id<Plan> work) {
    return std::ranges::any_of(
        book.jobs.of<SoldWork>(), [&](const auto& entry) { return entry.second.plan == work; });
}

void keepSoldBid(
    EditBuilder& edit, const Book& book, IdSource& ids, Id<Plan> work, const Estimate& estimate) {
    removeSoldBid(edit, book, work);
    for (const WorkBid& bid : workBids(estimate)) {
        SoldWork sold = soldWork(bid);
        sold.id = ids.next<SoldWork>();
        sold.plan = work;
        edit.put(sold);
    }
    for (const EstimateLine& line : estimate.lines) {
        SoldTask sold = soldTask(line);
        sold.id = ids.next<SoldTask>();
        sold.plan = work;
        edit.put(sold);
    }
}

bool needsEstimate(const Book& book, const House& house) {
    return house.stage != HouseStage::bidding && !hasSoldBid(book, house.work);
}

void putHouseStage(EditBuilder& edit, const Book& book, IdSource& ids, House house, Date today,
    const Estimate* estimate) {
    if (house.stage == HouseStage::bidding)
        removeSoldBid(edit, book, house.work);
    else if (estimate && needsEstimate(book, house))
        keepSoldBid(edit, book, ids, house.work, *estimate);
    if (!isFinished(house))
        house.finished = noDate;
    else if (house.finished == noDate)
        house.finished = today;
    edit.put(std::move(house));
}

} // namespace miterbook
