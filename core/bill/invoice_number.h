// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/result.h"

#include <string>
#include <vector>

namespace miterbook {

/// The number of the next invoice or credit note: one series for both, voided ones included,
/// without a gap. `first` begins an empty series. Error (conflict) with a sentence when a number of
/// `issued` is missing or there twice: then somebody else has written, or the book is damaged.
Result<int> nextInvoiceNumber(std::vector<int> issued, int first = 1);

/// How a number is written: at least four digits behind the shop's prefix: `T-0042`.
std::string invoiceNumberText(int number, const std::string& prefix = {});

} // namespace miterbook
