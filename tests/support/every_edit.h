// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/edit.h"
#include "support/random_rows.h"

#include <vector>

namespace miterbook {

/// For each kind of row: an edit that adds one, one that removes one, and one for each field that
/// changes it. Each stands on the book as given; references stay sound in all but the removals.
std::vector<Edit> everyEdit(const Book& book, std::uint32_t seed);

} // namespace miterbook
