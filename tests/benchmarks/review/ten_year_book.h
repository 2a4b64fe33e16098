// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>

namespace miterbook {

/// How large the book is.
struct TenYears {
    int houses = 2'000;
    int entriesPerHouse = 200; ///< 400 000 in all
    int plans = 60;
};

/// Makes a book file of ten years: finished houses over their plans, their bids as won, and time
/// entries, the same each time. Written by SQLite alone, past the journal. False: it has been said.
bool makeTenYearBook(const std::string& path, const TenYears& years);

} // namespace miterbook
