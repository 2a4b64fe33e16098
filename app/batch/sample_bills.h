// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "batch/opened_book.h"

#include <cstdint>
#include <vector>

namespace miterbook {

/// Gives the houses of a sample year, in the order in which they were begun, their money, up to
/// `today`; sample_year.h says what. Each is won and has its hours in the book. Errors: what an
/// edit of it refuses.
Result<void> addSampleBills(
    OpenedBook& opened, const std::vector<Id<House>>& houses, Date today, std::uint32_t seed);

} // namespace miterbook
