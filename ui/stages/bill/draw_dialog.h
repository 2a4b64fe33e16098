// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "bill/draw.h"

class QWidget;

namespace miterbook {

class BillDesk;

/// Asks for the day of a draw, what comes off it, and how much of a deposit it uses up; shows what
/// it comes to and issues it.
void issueDrawDialog(BillDesk& bill, QWidget* parent);

/// Asks which lines of an invoice a credit note takes back, how much of each, and why.
void issueCreditDialog(BillDesk& bill, const Bill& invoice, QWidget* parent);

/// Asks for the day and reason and voids an invoice.
void voidDialog(BillDesk& bill, const Bill& invoice, QWidget* parent);

} // namespace miterbook
