// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "review/ten_year_book.h"

namespace miterbook {

/// How much a shop of ten years has besides its houses and hours.
struct Grown {
    TenYears years;
    int openingsPerHouse = 80; ///< 160 000 in all
    int invoicesPerHouse = 6;  ///< 12 000 in all, each with lines and the paper as issued
    int builders = 8;
};

/// Makes the book file, the same each time. False: it has been said on standard error.
bool makeGrownBook(const std::string& path, const Grown& grown);

} // namespace miterbook
