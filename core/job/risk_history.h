// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "bid/risk.h"
#include "job/edit.h"

namespace miterbook {

/// Every piece of work of every finished house with a kept bid: hours bid against hours used.
std::vector<FinishedWork> finishedWorks(const Book& book);

/// Whether an edit can change what finishedWorks() gives.
bool touchesHistory(const std::vector<Change>& changes);

} // namespace miterbook
