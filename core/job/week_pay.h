// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "hours/pay_sheet.h"
#include "job/book.h"

namespace miterbook {

/// The entries of the seven days from `first`, which must have been opened, by date.
std::vector<TimeEntry> weekEntries(const Book& book, Date first);

/// The pay sheet of those by the book's crew and terms.
PaySheet weekPay(const Book& book, Date first);

} // namespace miterbook
