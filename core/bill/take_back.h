// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "bill/draw.h"
#include "bill/payment.h"

namespace miterbook {

// How an issued invoice is taken back: it is never changed itself.

/// Whether the paper can be voided: it counts, nothing is paid on it, no credit note takes it back,
/// neither retainage nor deposits that it brought have been released or used up since, and what a
/// credit note took back has not been billed again.
/// Error: the sentence that says why not.
Result<void> checkVoid(
    const Bill& bill, const std::vector<Bill>& bills, const std::vector<Allocation>& allocations);

/// How much of one line of an invoice a credit note takes back; positive for a line that brings.
struct LineCredit {
    Id<InvoiceLine> line;
    Money amount;
};

/// A credit note on a draw, without number and ids. Retainage and tax go back in proportion, so
/// that a draw credited in full has given all of its own back; but no more retainage than is still
/// held. Error: a sentence when there is no reason, or more is taken back than the lines still
/// hold.
Result<Bill> makeCredit(const Bill& draw, const std::vector<Bill>& bills,
    const std::vector<LineCredit>& credits, Date date, const std::string& reason);

} // namespace miterbook
