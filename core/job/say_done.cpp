// SPDX-License-Identifier: GPL-3.0-or-later
#include "job/say_done.h"

#include "basics/number_text.h"
#include "basics/quote.h"

namespace miterbook {

Result<void> canSayDone(const House& house, const WorkProgress& work) {
    const std::string name = capitalised(word(work.work));
    if (isFinished(house))
        return badInput(house.name + " is finished, and so is all of its work.");
    if (work.work == PieceOfWork::extras)
        return badInput("Each extra is done or not; say so where it is billed.");
    if (work.by == DoneBy::ticks) {
        return badInput(name
            + " are counted by the pieces that are ticked as hung; what is "
              "counted is not typed over.");
    }
    if (work.by == DoneBy::units) {
        return badInput(name + ": " + formatQuantity(work.unitsDone) + " of "
            + formatQuantity(work.unitsBid)
            + " are written down as finished; what is counted is not typed over.");
    }
    return {};
}

void putWorkDone(EditBuilder& edit, const Book& book, IdSource& ids, Id<House> house,
    PieceOfWork work, std::optional<Percent> done) {
    WorkDone said{{}, house, work, done.value_or(Percent())};
    for (const auto& [id, held] : book.jobs.of<WorkDone>()) {
        if (held.house == house && held.work == work)
            said.id = id;
    }
    if (!done) {
        if (said.id)
            edit.remove(said.id);
        return;
    }
    if (!said.id)
        said.id = ids.next<WorkDone>();
    edit.put(said);
}

} // namespace miterbook
