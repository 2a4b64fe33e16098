// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "batch/opened_book.h"

#include <vector>

namespace miterbook {

/// Gives the houses of a sample year that are underway, and the one finished last, their dates
/// around `today`; one person is expected in two places. Each house has its hours in the book.
/// Errors: what the edit refuses.
Result<void> addSampleDates(OpenedBook& opened, const std::vector<Id<House>>& houses, Date today);

} // namespace miterbook
