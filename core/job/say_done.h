// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "hours/house_progress.h"
#include "job/edit.h"

#include <optional>

namespace miterbook {

/// Whether how much is done of a piece of work can be said: not where it is counted, on extras, or
/// once the house is finished. Error: the sentence that says why not.
Result<void> canSayDone(const House& house, const WorkProgress& work);

/// Says how much of a piece of work of a house is done, 0 to 100 %; nothing takes back what was
/// said.
void putWorkDone(EditBuilder& edit, const Book& book, IdSource& ids, Id<House> house,
    PieceOfWork work, std::optional<Percent> done);

} // namespace miterbook
