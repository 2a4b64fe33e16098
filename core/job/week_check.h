// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/edit.h"

namespace miterbook {

/// Refuses an edit that would change the time of a week that has been approved, unless it takes the
/// approval back as well. Errors: one sentence naming the person and the day.
Result<void> checkWeeksOpen(const Book& book, const Edit& edit);

} // namespace miterbook
