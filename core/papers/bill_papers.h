// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "bill/draw.h"
#include "bill/statement.h"
#include "job/bills.h"
#include "papers/paper.h"

namespace miterbook {

/// An invoice or credit note as it will be issued. `before` is the house without it.
Paper invoicePaper(const Book& book, const Bill& bill, const Billing& before);

/// An extra with its price, to be signed. It shows neither hours nor costs.
Paper extraPaper(const Book& book, const Extra& extra, Date date);

/// The builder's statement over some days; with a late notice where invoices are overdue.
Paper statementPaper(const Book& book, Id<Builder> builder, Date from, Date to);

} // namespace miterbook
