// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/result.h"
#include "job/edit.h"

namespace miterbook {

/// Refuses an edit that would put a row into the book which no row may be: the one place that is
/// asked before anything is written. Errors: the sentence of the first row that is refused.
Result<void> checkRows(const Book& book, const Edit& edit);

} // namespace miterbook
