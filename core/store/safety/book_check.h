// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "store/safety/reading.h"

#include <string>
#include <vector>

namespace miterbook {

/// What a thorough look at a book file has found.
struct BookReport {
    int format = 0;
    std::int64_t rows = 0;
    std::int64_t edits = 0;
    std::int64_t papers = 0;           ///< issued
    std::vector<std::string> findings; ///< one sentence each; none for a sound book

    bool sound() const { return findings.empty(); }
};

/// Looks at every page, reference, row and issued paper of a book, and holds the rows against the
/// journal, which tells them a second time. Nothing is written; a book that was left in the midst
/// of a change is looked at in a copy. Errors: it is no book of ours or cannot be opened at all.
Result<BookReport> checkBook(const std::string& path);

} // namespace miterbook
