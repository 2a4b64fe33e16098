// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/edit.h"

namespace miterbook {

/// What was given out of hand stays as it is: an edit may add issued papers, invoices, their lines
/// and voids, and never changes or removes one. A new invoice bears the next number, its sums are
/// those of its lines, and its paper and the paper's SHA-256 come with it.
Result<void> checkIssued(const Book& book, const Edit& edit);

} // namespace miterbook
