// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/bills.h"

#include <string>

namespace miterbook {

/// The double entries of the days from `from` to `to` as CSV (RFC 4180) for any ledger: date,
/// document, account, debit, credit, memo. Debit and credit of each document are equal.
std::string ledgerCsv(const Book& book, Date from, Date to);

} // namespace miterbook
