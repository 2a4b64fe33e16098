// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "bid/bid_setup.h"
#include "sheet/plain_house.h"

#include <string>
#include <vector>

namespace miterbook {

/// A line of the sums that sheet and program must agree on.
struct SheetSum {
    std::string name;
    double ours = 0;
    double within = 0; ///< how far they may lie apart
};

/// The plain house as a spreadsheet: a table of openings and one of rooms whose formulas measure
/// the trim, and before them "Sums", whose rows are a name and a formula in the order of `sums`.
/// The formulas are those of a carpenter's own sheet and share nothing with the program.
std::string houseSheet(const PlainHouse& house, const BidSetup& setup);

/// The same sums by the program, takeoff and estimate afresh.
std::vector<SheetSum> programSums(const PlainHouse& house, const BidSetup& setup);

} // namespace miterbook
