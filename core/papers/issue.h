// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/bill_edits.h"

namespace miterbook {

/// Issues a bill that makeDraw and its like made: next number, lines, frozen paper with its
/// SHA-256, and the extras on it billed, all in one Edit. It can only be followed by a void or a
/// credit note. The house's plan must be open. Errors: one sentence.
Result<Edit> issueBill(const Book& book, IdSource& ids, const Bill& bill);

} // namespace miterbook
