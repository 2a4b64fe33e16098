// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/clock.h"
#include "basics/result.h"

#include <cstdint>
#include <string>
#include <vector>

namespace miterbook {

/// What came of a damaged book.
struct SalvageReport {
    std::int64_t kept = 0;         ///< rows that their tables still had
    std::int64_t restored = 0;     ///< rows that only the journal still had
    std::int64_t edits = 0;        ///< entries of the journal that could be read
    std::int64_t papers = 0;       ///< issued papers that are as they were issued
    std::vector<std::string> lost; ///< one sentence each

    bool complete() const { return lost.empty(); }
};

/// Reads whatever can be read of a damaged book, of this or an older format, into a new one: its
/// tables row by row round the damage, and from the journal what they have lost. The damaged book
/// is only copied. Errors: it is no book of ours or nothing of it can be read; there is a file at
/// `target`; the disk.
Result<SalvageReport> salvageBook(
    const std::string& book, const std::string& target, const Clock& clock);

} // namespace miterbook
