// SPDX-License-Identifier: GPL-3.0-or-later
#include "job/saw_spot_edit.h"

namespace miterbook {

const SawSpot* sawSpotOn(const Book& book, Id<Plan> plan, Id<Level> level) {
    for (const auto& [id, spot] : book.sheet(plan).of<SawSpot>()) {
        if (spot.level == level.value())
            return &spot;
    }
    return nullptr;
}

Result<Edit> sawSpotEdit(
    const Book& book, IdSource& ids, Id<Plan> plan, Id<Level> level, Spot spot) {
    const Plan* row = book.plan(plan);
    if (!row || !row->house)
        return badInput("A saw is put up in a house: start one from this plan first.");
    const SawSpot* present = sawSpotOn(book, plan, level);
    SawSpot put = present ? *present : SawSpot{ids.next<SawSpot>(), plan, level.value(), {}, {}};
    put.x = spot.x;
    put.y = spot.y;
    EditBuilder edit(book, present ? "Move the saw" : "Put the saw up");
    edit.put(std::move(put));
    return edit.take();
}

Edit noSawSpotEdit(const Book& book, Id<Plan> plan, Id<Level> level) {
    EditBuilder edit(book, "Take the saw away");
    if (const SawSpot* present = sawSpotOn(book, plan, level))
        edit.remove(present->id);
    return edit.take();
}

} // namespace miterbook
