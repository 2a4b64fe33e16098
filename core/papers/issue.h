// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/bill_edits.h"
#include "papers/paper.h"

namespace miterbook {

/// Issues a bill that makeDraw and its like made: next number, lines, frozen paper with its
/// SHA-256, and the extras on it billed, all in one Edit. It can only be followed by a void or a
/// credit note. The house's plan must be open. Errors: one sentence.
Result<Edit> issueBill(const Book& book, IdSource& ids, const Bill& bill);

/// The paper of an invoice as it was issued; over a voided one stands since when, and why. The
/// house's plan must be open. Errors: what paperAsIssued says; the paper is not in the book.
Result<Paper> invoiceAsIssued(const Book& book, const Invoice& invoice);

} // namespace miterbook
