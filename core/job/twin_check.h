// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/edit.h"

namespace miterbook {

/// Refuses a second row where there can be one: of pay for somebody, of a piece rate for somebody
/// and a task, of a share done for a house's piece of work, of a house's name on one plan set. What
/// an old book has twice may stay and be changed in other ways. Error: one sentence.
Result<void> checkTwins(const Book& book, const Edit& edit);

} // namespace miterbook
